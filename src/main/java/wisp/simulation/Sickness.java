package wisp.simulation;

import wisp.event.Died;
import wisp.event.IllnessFound;
import wisp.event.NavelChecked;
import wisp.event.NavelChecked.Finding;
import wisp.event.Recovered;
import wisp.event.Treated;

/** Writes the course of a calf's health: illness found, treated, recovered, navels looked at, death. */
record Sickness(Model model, WallClock clock, Chance chance) {
    void write(Newborn calf, Course course, Notebook page) {
        for (Episode episode : course.episodes()) {
            write(episode, page);
        }
        if (course.death() != Long.MAX_VALUE) {
            boolean early = course.death() < calf.minute() + 1440;
            String cause = course.cause() != null ? course.cause() : early ? "calving" : null;
            page.writeAtOnce(course.death(), new Died(cause, course.cause() != null && chance.happens(0.25)));
        }
    }

    void navelChecks(Newborn calf, Course course, Notebook page) {
        Husbandry husbandry = model.husbandry();
        long birth = calf.minute();
        navelCheck(husbandry.navelCheckEarly(), onDay(birth, chance.whole(2, 3)), course, page);
        navelCheck(husbandry.navelCheckLate(), onDay(birth, 7), course, page);
    }

    private void navelCheck(double share, long when, Course course, Notebook page) {
        boolean looked = chance.happens(share);
        boolean infected = course.episodes().stream()
                .anyMatch(e -> e.illness().isNavelInfection() && e.onset() <= when && when < e.end());
        double u = chance.uniform();
        if (looked) {
            page.write(when, new NavelChecked(infected ? infected(u) : sound(u)));
        }
    }

    private static Finding infected(double u) {
        return u < 0.45 ? Finding.PAINFUL : u < 0.8 ? Finding.DISCHARGING : Finding.THICKENED;
    }

    private static Finding sound(double u) {
        return u < 0.88 ? Finding.NORMAL : u < 0.98 ? Finding.THICKENED : Finding.HERNIA;
    }

    private void write(Episode episode, Notebook page) {
        Illness illness = episode.illness();
        int severity = episode.fatal() ? 3 : chance.happens(0.7) ? 1 : 2;
        boolean hot = !illness.condition().equals("bloat") && chance.happens(0.6);
        double temperature = Math.round(10 * (39.4 + 0.5 * chance.normal())) / 10.0;
        page.writeAtOnce(
                episode.onset(),
                new IllnessFound(illness.condition(), severity, hot ? temperature : null, signs(illness.condition())));
        long treated = episode.onset() + chance.whole(10, 180);
        int doses = illness.medicine().isEmpty() || !chance.happens(0.9) ? 0 : chance.whole(1, 3);
        String batch = "B" + chance.whole(100, 120);
        for (int dose = 0; dose < doses && treated < episode.end(); dose++, treated += 1440) {
            page.write(treated, treatment(illness, batch));
        }
        if (!episode.fatal() && !chance.happens(model.recording().recoveryMissing())) {
            page.write(episode.end(), new Recovered(illness.condition()));
        }
    }

    private static Treated treatment(Illness illness, String batch) {
        boolean drink = illness.medicine().equals("oral rehydration salts");
        return new Treated(
                illness.medicine(),
                drink ? 2.0 : 4.0,
                drink ? "l" : "ml",
                drink ? "oral" : "injection",
                drink ? null : batch,
                illness.condition(),
                illness.withdrawalDays(),
                null);
    }

    private static String signs(String condition) {
        return switch (condition) {
            case "diarrhoea" -> "loose dung, slow to drink";
            case "pneumonia" -> "cough, fast breathing";
            case "navel-infection" -> "navel thick and painful";
            case "joint-ill" -> "lame, joint warm";
            case "septicaemia" -> "weak, will not rise";
            case "bloat" -> "left flank tight";
            default -> null;
        };
    }

    private long onDay(long birth, int day) {
        return clock.minute(clock.date(birth).plusDays(day), chance.whole(420, 660));
    }
}
