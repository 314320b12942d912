package wisp.report;

import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.logging.Level;
import org.apache.pdfbox.pdmodel.PDDocument;
import wisp.log.DayHeads;

/**
 * A sheet as PDF, made from a template whose HTML is well-formed XML. Text is set in Liberation Sans, which PDFBox
 * carries (Latin, Greek and Cyrillic letters) and which is embedded; the document is tagged, so that it can be read
 * aloud.
 */
public final class PrintedPage {
    private static final TemplateEngine TEMPLATES = TemplateEngine.createPrecompiled(ContentType.Html);
    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    static {
        XRLog.listRegisteredLoggers().forEach(logger -> XRLog.setLevel(logger, Level.WARNING));
    }

    private PrintedPage() {}

    /**
     * Prints a template.
     *
     * @param template its name below {@code web/templates}
     * @param sheet what it shows
     * @param heads of the log, so that the paper notes the newest one
     * @return the PDF
     */
    public static byte[] pdf(String template, Object sheet, DayHeads heads) {
        StringOutput html = new StringOutput();
        TEMPLATES.render(template, Map.of("page", sheet, "head", NotedHead.words(heads)), html);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            PdfRendererBuilder builder = new PdfRendererBuilder();
            builder.useFont(PrintedPage::font, "Liberation Sans");
            builder.usePdfUaAccessibility(true);
            builder.withProducer("Wisp");
            builder.withHtmlContent(html.toString(), null);
            builder.toStream(bytes);
            builder.run();
            return bytes.toByteArray();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static InputStream font() {
        return PDDocument.class.getResourceAsStream(FONT);
    }
}
