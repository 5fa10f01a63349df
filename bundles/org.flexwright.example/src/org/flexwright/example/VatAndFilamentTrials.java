package org.flexwright.example;

import org.flexwright.core.trial.Attachments;
import org.flexwright.core.trial.Trials;
import org.flexwright.model.AttachmentKind;
import org.flexwright.model.Part;
import org.flexwright.model.PartRole;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Session;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;

/** T01, T02 and T09: printed from resin and from filament. */
final class VatAndFilamentTrials {
    private static final String PRINT = "vatprint.print";
    private static final int RESIN = 0x6C7A86;
    private static final int STRAND = 0x3F6B4F;

    private final Bench bench;
    private final Story story;

    VatAndFilamentTrials(Bench bench, Story story) {
        this.bench = bench;
        this.story = story;
    }

    void vat() {
        t01();
        t02();
    }

    void filament() {
        t09();
    }

    private void t01() {
        Session session = story.session("S2", "2026-02-10T17:00", 20.5, 45, "60.5;61;60.5;60;61");
        Trial trial = bench.trial("T01", Story.VAT, "soft resin, exposure from a sheet",
                "Exposure copied from a sheet for 50 µm layers; layers here are 100 µm.");
        bench.set(trial, PRINT, "layerHeight", "100 um", "plannedExposure", "2.2 s", "actualExposure", "2.2 s", "exposureForLayer", "50 um",
                "irradiance", "2.5 mW/cm2", "penetrationDepth", "150 um", "criticalDose", "3.0 mJ/cm2", "overCure", "50 um", "partHeight", "8 mm");
        bench.use(trial, PRINT, PartRole.SINGLE, story.oldResin, 4.0);
        story.acknowledge(trial, session, PRINT);
        bench.done(trial, session, PRINT);
        bench.edit("T01 failed", e -> Trials.status(e, trial, TrialState.FAILED, "layers split while the part was lifted; no part"));
        photo(trial, "t01-split.png", DomePictures.section(1.4, RESIN, false, false, true), "layers apart");
        bench.conclude(trial, "An exposure belongs to its layer height: the dose was below what 100 µm needs.", 2.4, 1.5);
    }

    private void t02() {
        Session made = story.session("S3", "2026-02-14T10:00", 21.0, 44, "61;61;60.5;61;61");
        Trial trial = bench.trial("T02", Story.VAT, "soft resin, own working curve", "Own working curve, warm post-cure under water.");
        bench.set(trial, PRINT, "layerHeight", "100 um", "plannedExposure", "4.5 s", "actualExposure", "4.5 s", "exposureForLayer", "100 um",
                "irradiance", "2.5 mW/cm2", "penetrationDepth", "150 um", "criticalDose", "3.0 mJ/cm2", "overCure", "50 um", "partHeight", "8 mm");
        bench.set(trial, "vatprint.wash", "solvent", "isopropanol", "plannedMinutes", "3 min", "actualMinutes", "3 min");
        bench.set(trial, "vatprint.postcure", "plannedDryMinutes", "30 min", "actualDryMinutes", "35 min", "plannedMinutes", "20 min", "actualMinutes",
                "20 min", "plannedTemperature", "50 degC", "actualTemperature", "50 degC", "medium", "water");
        bench.use(trial, PRINT, PartRole.SINGLE, story.resin, 6.0);
        story.acknowledge(trial, made, PRINT);
        bench.done(trial, made);
        Session read = story.session("S4", "2026-02-16T18:00", 21.5, 43, "60.5;61;61;60.5;61");
        String[] hard = { "57;56.5;56;57;56.5", "57;57;57.5;57;56.5", "57.5;58;57.5;57;57.5" };
        String[] peak = { "0.92;0.92;0.93", "0.93;0.93;0.94", "0.94;0.94;0.95" };
        String[] back = { "1.8", "1.9", "2.0" };
        for (int i = 0; i < 3; i++) {
            Part part = bench.part(trial, "P" + (i + 1), PieceKind.PART, 1.4, "2026-02-14T15:00");
            bench.read(part, Story.flange(), hard[i], read, story.durometer);
            story.dome(part, read, peak[i], "0.24;0.25", "0.73", back[i], "no");
        }
        bench.edit("T02 made", e -> Trials.status(e, trial, TrialState.MADE, null));
        photo(trial, "t02.png", DomePictures.section(1.4, RESIN, false, false, false), "section");
        bench.conclude(trial, "Hardness comes near, liveliness does not: it takes two seconds to come back.", 4.6, 3);
    }

    private void t09() {
        Session session = story.session("S16", "2026-04-25T10:00", 22.0, 48, "61;60.5;61;61;60.5");
        Trial trial = bench.trial("T09", Story.FILAMENT, "soft filament 74A, wall 1.0",
                "A harder family with a thinner wall: does it press as softly?");
        bench.set(trial, "filament.dry", "plannedTemperature", "50 degC", "plannedHours", "6 h", "actualTemperature", "50 degC", "actualHours", "6 h");
        bench.set(trial, "filament.print", "plannedSpeed", "12 mm/s", "actualSpeed", "4 mm/s", "nozzleDiameter", "0.4 mm", "layerHeight", "0.2 mm",
                "lineWidth", "0.45 mm", "strandDiameter", "1.75 mm", "freeLength", "14 mm", "strandModulus", "12 MPa", "consistency", "5000",
                "flowIndex", "0.5", "hoursOut", "5 h", "plannedMass", "1.00 g", "actualMass", "0.89 g");
        bench.use(trial, "filament.print", PartRole.SINGLE, story.strand, 5.0);
        story.acknowledge(trial, session, "filament.print");
        bench.done(trial, session);
        Session read = story.session("S17", "2026-04-26T11:00", 22.5, 47, "61;60.5;60.5;61;61");
        String[] peak = { "0.93;0.94", "0.95;0.95", "0.96;0.96", "0.94;0.95", "0.97;0.96" };
        String[] inverted = { "yes", "yes", "no", "yes", "yes" };
        for (int i = 0; i < 5; i++) {
            Part part = bench.part(trial, "P" + (i + 1), PieceKind.PART, 1.0, "2026-04-25T15:00");
            story.dome(part, read, peak[i], null, null, null, inverted[i]);
            if (i < 3) {
                bench.read(part, Story.flange(), (73.5 + i / 2.0) + ";74;74;73.5;74", read, story.durometer);
            }
        }
        bench.edit("T09 made", e -> Trials.status(e, trial, TrialState.MADE, null));
        photo(trial, "t09-inverted.png", DomePictures.section(1.0, STRAND, true, false, false), "rests inverted");
        bench.conclude(trial, "At 12 mm/s the strand buckled in the feeder; at 4 mm/s it printed light by 11 %. So thin a wall stays in.", 3.2, 5);
    }

    private void photo(Trial trial, String name, byte[] png, String what) {
        Attachments.copyIn(bench.session(), name, png, AttachmentKind.PHOTO, "Drawn, not photographed: " + what + ", bar 10 mm", trial);
    }
}
