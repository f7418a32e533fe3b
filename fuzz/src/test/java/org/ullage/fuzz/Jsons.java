package org.ullage.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/** Changes trees of JSON: values exchanged, fields taken out, renamed and added, lists doubled. */
final class Jsons {

    private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

    private Jsons() {}

    /** A copy with a few changes. */
    static JsonNode changed(JsonNode tree, Draw draw) {
        JsonNode copy = tree.deepCopy();
        for (int i = draw.below(3); i >= 0; i--) {
            List<JsonNode> inner = new ArrayList<>();
            collect(copy, inner);
            change(draw.of(inner), draw);
        }
        return copy;
    }

    private static void collect(JsonNode node, List<JsonNode> inner) {
        if (node.isContainerNode()) {
            inner.add(node);
            node.forEach(child -> collect(child, inner));
        }
    }

    private static void change(JsonNode node, Draw draw) {
        if (node instanceof ObjectNode object) {
            change(object, draw);
        } else if (node instanceof ArrayNode array) {
            if (array.isEmpty() || draw.chance(0.3)) {
                array.add(value(draw));
            } else if (draw.chance(0.5)) {
                array.add(array.get(draw.below(array.size())).deepCopy());
            } else {
                array.remove(draw.below(array.size()));
            }
        }
    }

    private static void change(ObjectNode object, Draw draw) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        String name = names.isEmpty() || draw.chance(0.1) ? Texts.any(draw) : draw.of(names);
        JsonNode old = object.get(name);
        switch (draw.below(5)) {
            case 0 -> object.remove(name);
            case 1 -> object.set(name, value(draw));
            case 2 -> object.set(Texts.spoilt(name, draw), old == null ? value(draw) : old.deepCopy());
            default -> {
                if (old != null && old.isTextual()) {
                    object.put(name, draw.chance(0.7) ? likely(old.asText(), draw) : Texts.spoilt(old.asText(), draw));
                } else {
                    object.set(name, value(draw));
                }
            }
        }
    }

    /** A quantity keeps its unit and gets another number. */
    private static String likely(String text, Draw draw) {
        int blank = text.indexOf(' ');
        return blank > 0 && Character.isDigit(text.charAt(0))
                ? Texts.number(draw) + text.substring(blank)
                : Texts.quantity(draw);
    }

    private static JsonNode value(Draw draw) {
        return switch (draw.below(9)) {
            case 0 -> MAKE.nullNode();
            case 1 -> MAKE.booleanNode(draw.chance(0.5));
            case 2 -> MAKE.numberNode(draw.number(-10, 10));
            case 3 -> MAKE.numberNode(draw.below(100));
            case 4 -> MAKE.textNode(Texts.quantity(draw));
            case 5 -> MAKE.textNode(Texts.any(draw));
            case 6 -> MAKE.arrayNode();
            case 7 -> MAKE.objectNode();
            default ->
                MAKE.objectNode().set(Texts.any(draw), MAKE.arrayNode().add(1.5).add("x"));
        };
    }
}
