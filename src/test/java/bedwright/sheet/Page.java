package bedwright.sheet;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A page or picture read back as XML, to look things up in. */
final class Page {
    private final Document document;

    private Page(Document document) {
        this.document = document;
    }

    static Page parse(String text) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://xml.org/sax/features/external-general-entities", false);
            var builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            return new Page(builder.parse(new InputSource(new StringReader(text))));
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new AssertionError("Not well-formed: " + e.getMessage(), e);
        }
    }

    String text() {
        return document.getDocumentElement().getTextContent();
    }

    List<Element> all(String element) {
        return list(document.getElementsByTagName(element));
    }

    static List<Element> within(Element parent, String element) {
        return list(parent.getElementsByTagName(element));
    }

    private static List<Element> list(NodeList nodes) {
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    Element byId(String id) {
        return all("*").stream()
                .filter(e -> e.getAttribute("id").equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("No element with the id " + id));
    }

    /** Groups of a class within an element. */
    static long marks(Element parent, String classes) {
        return within(parent, "g").stream()
                .filter(g -> g.getAttribute("class").equals(classes))
                .count();
    }

    record Attribute(String element, String name, String value) {}

    List<Attribute> attributes() {
        List<Attribute> attributes = new ArrayList<>();
        for (Element element : all("*")) {
            NamedNodeMap map = element.getAttributes();
            for (int i = 0; i < map.getLength(); i++) {
                attributes.add(new Attribute(
                        element.getTagName(),
                        map.item(i).getNodeName(),
                        map.item(i).getNodeValue()));
            }
        }
        return attributes;
    }

    /** Texts of a table's body by row, head of the row included. */
    List<List<String>> rows(String table, String part) {
        List<List<String>> rows = new ArrayList<>();
        for (Element body : within(byId(table), part)) {
            for (Element row : within(body, "tr")) {
                List<String> cells = new ArrayList<>();
                for (Element cell : within(row, "*")) {
                    cells.add(cell.getTextContent());
                }
                rows.add(cells);
            }
        }
        return rows;
    }
}
