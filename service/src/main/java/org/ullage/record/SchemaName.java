package org.ullage.record;

import org.ullage.quantity.OutOfRangeException;

/** What a file says it is, so that one kind is not read as another. */
final class SchemaName {

    private SchemaName() {}

    static void require(String wanted, String found) {
        if (!wanted.equals(found)) {
            throw new OutOfRangeException(
                    "schema", PlainText.quoted(found), "\"" + wanted + "\"", "check that the right file was opened");
        }
    }
}
