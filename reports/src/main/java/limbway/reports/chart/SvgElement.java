package limbway.reports.chart;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.io.StringWriter;
import java.util.function.Consumer;

import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;

import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

import limbway.reports.words.Xml;

/** Records what is drawn as one SVG element, with names of its own so that several fit into one page. */
final class SvgElement {

    private static final String NAMESPACE = "http://www.w3.org/2000/svg";
    private static final int DECIMALS = 2;

    private SvgElement() {}

    static String of(Picture picture, Consumer<Graphics2D> painting) {
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(emptyDocument());
        context.setComment(null);
        context.setPrecision(DECIMALS);
        context.setIDGenerator(new SVGIDGenerator() {
            @Override
            public String generateID(String prefix) {
                return picture.id() + "-" + super.generateID(prefix);
            }
        });
        SVGGraphics2D g = new SVGGraphics2D(context, false);
        g.setSVGCanvasSize(new Dimension(picture.widthPx(), picture.heightPx()));
        painting.accept(g);
        Element root = g.getRoot();
        root.setAttribute("id", picture.id());
        root.setAttribute("viewBox", "0 0 " + picture.widthPx() + " " + picture.heightPx());
        root.setAttribute("role", "img");
        root.setAttribute("aria-labelledby", picture.id() + "-title " + picture.id() + "-desc");
        root.insertBefore(told(root, "desc", picture.id(), picture.description()), root.getFirstChild());
        root.insertBefore(told(root, "title", picture.id(), picture.title()), root.getFirstChild());
        dropEmptyDefinitions(root);
        FittedText.fit(root);
        keepToWhatXmlAllows(root);
        return written(root);
    }

    private static Element told(Element root, String name, String id, String text) {
        Element element = root.getOwnerDocument().createElementNS(NAMESPACE, name);
        element.setAttribute("id", id + "-" + name);
        element.setTextContent(text);
        return element;
    }

    /** Batik leaves an empty list of definitions, with the same name in every picture. */
    private static void dropEmptyDefinitions(Element root) {
        NodeList lists = root.getElementsByTagName("defs");
        for (int i = lists.getLength() - 1; i >= 0; i--) {
            if (!lists.item(i).hasChildNodes()) {
                lists.item(i).getParentNode().removeChild(lists.item(i));
            }
        }
    }

    /** Names may hold characters that no XML file may hold, not even by their numbers. */
    private static void keepToWhatXmlAllows(Node node) {
        if (node.getNodeType() == Node.TEXT_NODE) {
            node.setNodeValue(Xml.shown(node.getNodeValue()));
        }
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            keepToWhatXmlAllows(child);
        }
    }

    private static String written(Element root) {
        StringWriter text = new StringWriter();
        try {
            Transformer transformer = TransformerFactory.newInstance().newTransformer();
            transformer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
            transformer.transform(new DOMSource(root), new StreamResult(text));
        } catch (TransformerException e) {
            throw new IllegalStateException("a picture could not be written as SVG: " + e.getMessage(), e);
        }
        return text.toString();
    }

    private static Document emptyDocument() {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(NAMESPACE, "svg", null);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("this Java has no XML parser", e);
        }
    }
}
