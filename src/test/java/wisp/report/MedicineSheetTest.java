package wisp.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import wisp.cohort.Herd;
import wisp.indicator.Definitions;
import wisp.log.ChainHead;
import wisp.log.DayHead;
import wisp.log.DayHeads;
import wisp.medicine.MedicineBook;
import wisp.testing.Calf;
import wisp.testing.Events;

class MedicineSheetTest {
    private static final ChainHead HEAD = new ChainHead(122, "5e".repeat(32));
    private static final DayHeads HEADS =
            new DayHeads(ZoneOffset.UTC, HEAD, List.of(new DayHead(LocalDate.parse("2026-03-05"), HEAD)));

    private final Events log = Events.london();

    @Test
    void thePdfHoldsEveryEntryOnNumberedPages() throws IOException {
        log.add("farm-described", "farm", "2026-01-01 00:00", "name: \"Höfði & <Söhne> Łąka\", zone: Europe/London");
        for (int i = 1; i <= 60; i++) {
            Calf calf = new Calf(log, "C" + i).born("2026-03-01 06:00", "alive: true");
            calf.at(
                    "2026-03-04 09:00",
                    "treated",
                    "medicine: Oralyte, dose: 2.5, dose_unit: l, batch: B" + i + ", meat_withdrawal_days: 3");
        }
        new Calf(log, "C1").at("2026-03-05 09:00", "left", "reason: sold");
        byte[] pdf = sheet("2026-03-01", "2026-03-31").pdf(HEADS);
        Files.createDirectories(Path.of("target", "printed"));
        Files.write(Path.of("target", "printed", "medicine-book.pdf"), pdf);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("Höfði & <Söhne> Łąka"), text);
            for (int i = 1; i <= 60; i++) {
                assertTrue(text.contains("B" + i), "entry " + i);
            }
            assertTrue(text.contains("60 entries for 60 animals. 60 entries lack"), text);
            assertTrue(text.contains("C1 left on 5 Mar 2026, under the withdrawal of Oralyte"), text);
            String words = text.replaceAll("\\s+", " ");
            assertTrue(words.contains("the head of the log on its newest day, 5 Mar 2026, was " + HEAD + "."), text);
            int pages = document.getNumberOfPages();
            assertTrue(pages > 1);
            assertTrue(text.contains("page " + pages + " of " + pages), text);
            assertTrue(document.getDocumentCatalog().getMarkInfo().isMarked());
            assertEquals("en", document.getDocumentCatalog().getLanguage().substring(0, 2));
        }
    }

    @Test
    void anEmptyBookSaysThatItIsEmpty() throws IOException {
        try (PDDocument document =
                Loader.loadPDF(sheet("2026-03-01", "2026-03-31").pdf(DayHeads.none(ZoneOffset.UTC)))) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("No medicine is on record in these days."), text);
            assertFalse(text.contains("head of the log"), text);
        }
    }

    private MedicineSheet sheet(String from, String to) {
        Herd herd = Herd.following();
        herd.apply(log.all());
        return MedicineSheet.of(
                MedicineBook.of(herd.cohort(), Definitions.load(null), LocalDate.parse(from), LocalDate.parse(to)),
                herd.cohort());
    }
}
