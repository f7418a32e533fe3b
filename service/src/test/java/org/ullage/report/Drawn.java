package org.ullage.report;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXParseException;

/** A drawing or a page as an XML parser sees it, and the room its labels take by their estimated width. */
final class Drawn {

    private static final double ROUNDING = 0.2;

    private Drawn() {}

    /** A label with the rectangle it fills. */
    record Label(String text, double left, double right, double top, double bottom) {

        boolean overlaps(Label other) {
            return left < other.right - ROUNDING
                    && other.left < right - ROUNDING
                    && top < other.bottom - ROUNDING
                    && other.top < bottom - ROUNDING;
        }

        boolean isInside(double width, double height) {
            return left >= -ROUNDING && right <= width + ROUNDING && top >= -ROUNDING && bottom <= height + ROUNDING;
        }
    }

    /** Parses strictly; nothing outside the text is read. */
    static Document parse(String xml) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
            factory.setAttribute(XMLConstants.ACCESS_EXTERNAL_DTD, "");
            var builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new Strict());
            return builder.parse(new InputSource(new StringReader(xml)));
        } catch (Exception malformed) {
            throw new AssertionError("not well-formed: " + malformed.getMessage() + "\n" + xml, malformed);
        }
    }

    static List<Element> elements(Document document, String name) {
        NodeList found = document.getElementsByTagNameNS("*", name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    static List<Label> labels(Document svg) {
        return elements(svg, "text").stream().map(Drawn::label).toList();
    }

    private static Label label(Element element) {
        String text = element.getTextContent();
        double x = number(element, "x");
        double base = number(element, "y");
        double width = element.hasAttribute("font-weight") ? Letters.boldWidth(text) : Letters.width(text);
        double left = switch (element.getAttribute("text-anchor")) {
            case "start" -> x;
            case "middle" -> x - width / 2;
            default -> x - width;
        };
        // From the head of a capital to the foot of a letter such as g.
        return new Label(text, left, left + width, base - 2 * Letters.middleToBase(), base + Letters.size() / 4);
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }

    private static final class Strict implements ErrorHandler {

        @Override
        public void warning(SAXParseException problem) throws SAXParseException {
            throw problem;
        }

        @Override
        public void error(SAXParseException problem) throws SAXParseException {
            throw problem;
        }

        @Override
        public void fatalError(SAXParseException problem) throws SAXParseException {
            throw problem;
        }
    }
}
