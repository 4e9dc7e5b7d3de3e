package weekwright.site;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** An Atom feed (RFC 4287). Its moments are noon of the day: the build log tells no times of day. */
final class AtomFeed {
    private static final String ATOM = "http://www.w3.org/2005/Atom";

    private AtomFeed() {}

    /**
     * @param key what the ids are made from; the same for the same project
     * @param address of the whole log, ending in a slash; empty where it is not known, then links are relative
     * @param by who the feed is by, where an entry names nobody
     */
    record Head(String key, String title, String address, String by, LocalDate began) {}

    /** @param html the whole text; its addresses are relative to the log's own */
    record Entry(String key, String title, String path, LocalDate day, String by, String html) {}

    static byte[] of(Head head, List<Entry> entries) {
        StringWriter text = new StringWriter();
        try {
            XMLStreamWriter xml = XMLOutputFactory.newInstance().createXMLStreamWriter(text);
            xml.writeStartDocument("utf-8", "1.0");
            xml.writeStartElement("feed");
            xml.writeDefaultNamespace(ATOM);
            if (!head.address().isEmpty()) {
                xml.writeAttribute("xml:base", head.address());
                link(xml, "self", head.address() + "feed.xml");
            }
            element(xml, "id", id(head.key()));
            element(xml, "title", head.title());
            element(
                    xml,
                    "updated",
                    moment(entries.stream()
                            .map(Entry::day)
                            .max(LocalDate::compareTo)
                            .orElse(head.began())));
            link(xml, "alternate", head.address() + "index.html");
            author(xml, head.by());
            for (Entry entry : entries) {
                xml.writeStartElement("entry");
                element(xml, "id", id(head.key() + " " + entry.key()));
                element(xml, "title", entry.title());
                element(xml, "updated", moment(entry.day()));
                element(xml, "published", moment(entry.day()));
                link(xml, "alternate", head.address() + entry.path());
                if (!entry.by().isEmpty()) {
                    author(xml, entry.by());
                }
                xml.writeStartElement("content");
                xml.writeAttribute("type", "html");
                xml.writeCharacters(fit(entry.html()));
                xml.writeEndElement();
                xml.writeEndElement();
            }
            xml.writeEndDocument();
            xml.close();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String id(String key) {
        return "urn:uuid:" + UUID.nameUUIDFromBytes(key.getBytes(StandardCharsets.UTF_8));
    }

    private static String moment(LocalDate day) {
        return day + "T12:00:00Z";
    }

    private static void element(XMLStreamWriter xml, String name, String text) throws XMLStreamException {
        xml.writeStartElement(name);
        xml.writeCharacters(fit(text));
        xml.writeEndElement();
    }

    private static void author(XMLStreamWriter xml, String name) throws XMLStreamException {
        xml.writeStartElement("author");
        element(xml, "name", name);
        xml.writeEndElement();
    }

    private static void link(XMLStreamWriter xml, String rel, String to) throws XMLStreamException {
        xml.writeEmptyElement("link");
        xml.writeAttribute("rel", rel);
        xml.writeAttribute("href", to);
    }

    /** Without the characters that XML 1.0 section 2.2 has no place for. */
    private static String fit(String text) {
        return text.replaceAll("[^\\x09\\x0A\\x0D\\x20-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]", "");
    }
}
