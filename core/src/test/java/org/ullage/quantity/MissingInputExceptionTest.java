package org.ullage.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class MissingInputExceptionTest {

    @Test
    void namesTheInputWhoNeedsItAndWhatToDo() {
        MissingInputException missing =
                new MissingInputException("static head", "a method", "give the height of the highest point");
        assertThat(missing)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("static head is missing: a method needs it; give the height of the highest point");
        assertThat(missing.input()).isEqualTo("static head");
    }
}
