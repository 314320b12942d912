package wisp.simulation;

import wisp.event.Birth;
import wisp.event.CleanlinessScored;
import wisp.event.ColostrumFed;
import wisp.event.Event;
import wisp.event.NavelTreated;

/** Writes the first day: birth, cleanliness, navel and colostrum, with the gaps and slips that the model states. */
record FirstDay(Model model, WallClock clock, Chance chance) {
    /** Writes the birth; false where it was not written down by the cut, and so the calf is not known. */
    boolean birth(Newborn calf, String dam, Notebook page) {
        Recording recording = model.recording();
        boolean weighed = !chance.happens(recording.weightMissing());
        boolean placed = !chance.happens(recording.penMissing());
        Birth birth = new Birth(
                calf.alive(),
                calf.sex(),
                dam,
                calf.breed().dairy() ? "bull-" + chance.whole(1, 4) : "bull-" + chance.whole(5, 6),
                calf.breed().name(),
                placed ? calf.place().name() : null,
                calf.ease(),
                calf.litter(),
                calf.damParity(),
                weighed ? calf.weightKg() : null,
                calf.keepEntire() ? Boolean.TRUE : null);
        Event written = chance.happens(recording.birthTimeUnknown())
                ? page.writeDate(calf.minute(), birth)
                : page.write(calf.minute(), birth);
        return written != null;
    }

    void care(Newborn calf, Notebook page) {
        cleanliness(calf, page);
        navel(calf, page);
        colostrum(calf, page);
    }

    private void cleanliness(Newborn calf, Notebook page) {
        long when = calf.minute() + chance.whole(10, 240);
        boolean missing = chance.happens(model.recording().cleanlinessMissing(calf.night()));
        String pen = chance.happens(0.5) ? calf.place().name() : null;
        if (missing) {
            return;
        }
        CleanlinessScored right = new CleanlinessScored(calf.score(), pen);
        if (chance.happens(model.recording().amendedScore())) {
            int wrong = calf.score() == 3 ? 2 : calf.score() + 1;
            Event first = page.writeAtOnce(when, new CleanlinessScored(wrong, pen));
            Corrections.amend(first, when, right, clock, page, chance);
        } else {
            page.write(when, right);
        }
    }

    private void navel(Newborn calf, Notebook page) {
        NavelCare.Product product = chance.one(model.navelCare().products(), NavelCare.Product::share);
        NavelTreated.Method method =
                chance.happens(model.navelCare().sprayShare()) ? NavelTreated.Method.SPRAY : NavelTreated.Method.DIP;
        double u = chance.uniform();
        if (calf.navelMinutes() > 10 * 1440 || !page.open(calf.minute() + (long) calf.navelMinutes())) {
            return;
        }
        long when = calf.minute() + (long) calf.navelMinutes();
        NavelTreated treated = new NavelTreated(product.name(), product.concentrationPercent(), method);
        Recording recording = model.recording();
        if (u < recording.navelMissing()) {
            return;
        }
        if (u < recording.navelMissing() + recording.navelTimeUnknown()) {
            page.writeDate(when, treated);
        } else if (u > 1 - recording.amendedNavel() && page.open(when + 720)) {
            Event first = page.writeAtOnce(when + 720, treated);
            Corrections.amend(first, when, treated, clock, page, chance);
        } else {
            page.write(when, treated);
        }
    }

    private void colostrum(Newborn calf, Notebook page) {
        boolean missing = chance.happens(model.recording().colostrumMissing(calf.night()));
        Double brix = chance.happens(0.6) ? calf.brixPercent() : null;
        if (missing) {
            return;
        }
        for (Newborn.Feed feed : calf.feeds()) {
            Double volume = feed.method() == ColostrumFed.Method.SUCKLED ? null : feed.volumeL();
            page.write(calf.minute() + feed.minutes(), new ColostrumFed(volume, feed.method(), brix));
        }
    }
}
