package org.flexwright.core.bench;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.bench.BenchGate.Asked;
import org.flexwright.core.bench.BenchPlace.Part;
import org.flexwright.core.bench.BenchTap.Choice;
import org.flexwright.core.bench.BenchTap.Kind;
import org.flexwright.core.bench.BenchTap.Rank;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldRole;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.field.FieldType;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.Mixtures;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.view.TimeLine;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.model.Session;
import org.flexwright.model.Step;
import org.flexwright.model.StepState;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.quantity.QuantityKind;

/** The taps offered on a screen, made from what the step's kind describes. */
final class Offers {
    static final FieldDescriptor GRAMS = FieldDescriptor.quantity("net", "Mass", QuantityKind.MASS, "g").withBounds(0, 100_000, true).withOptional(false);
    static final FieldDescriptor MINUTES = FieldDescriptor.quantity("minutes", "Minutes since contact", QuantityKind.DURATION, "min").withBounds(0, 10_000, false)
            .withOptional(false);
    private final Registries registries;
    private final Gates gates;

    Offers(Registries registries, Gates gates) {
        this.registries = registries;
        this.gates = gates;
    }

    List<BenchTap> of(Trial trial, BenchPlace place, BenchGate gate, Targets targets, Instant now) {
        List<BenchTap> taps = new ArrayList<>();
        boolean over = trial.getState() == TrialState.FAILED || trial.getState() == TrialState.DISCARDED;
        if (!over) {
            switch (place.part()) {
                case CAUTIONS -> cautions(trial.getSteps().get(place.step()), trial, now, taps);
                case GATE -> gate(gate, taps);
                case USE -> use(trial.getSteps().get(place.step()), place.use(), taps);
                case WORK -> work(trial.getSteps().get(place.step()), trial, gate, targets, now, taps);
                case END -> end(trial, taps);
            }
            contact(trial, place, taps);
            room(trial, place, now, taps);
        }
        always(trial, over, taps);
        taps.sort(Comparator.comparing(BenchTap::rank));
        return taps;
    }

    private void cautions(Step step, Trial trial, Instant now, List<BenchTap> taps) {
        List<HazardPrompt> open = registries.prompts(step, trial).stream().filter(p -> !Places.acknowledged(step, p, now)).toList();
        if (!open.isEmpty()) {
            boolean sheet = open.stream().anyMatch(HazardPrompt::needsSheet) && !Sheets.known(step);
            BenchTap tap = BenchTap.of("ack", Say.TAP_ACK.text(), sheet ? Kind.SHEET : Kind.TOUCH, Rank.MAIN, List.of());
            String last = sheet && trial.eContainer() instanceof Project project ? Sheets.last(project).map(Sheets.Sheet::text).orElse("") : "";
            taps.add(last.isEmpty() ? tap : tap.offering(last, Say.OFFER_SHEET.text(last)));
        }
    }

    private void gate(BenchGate gate, List<BenchTap> taps) {
        boolean met = gate.met();
        taps.add(BenchTap.of("go", met ? Say.TAP_GO.text() : Say.TAP_GO_AGAINST.text(), met ? Kind.TOUCH : Kind.REASON, met ? Rank.MAIN : Rank.SIDE,
                met ? List.of() : reasons(Say.AGAINST_EYE, Say.AGAINST_EXPERIENCE, Say.AGAINST_PURPOSE)));
        taps.add(BenchTap.of("hold", Say.TAP_HOLD.text(), Kind.REASON, met ? Rank.SIDE : Rank.MAIN, reasons(Say.HOLD_MOULD, Say.HOLD_CHECK, Say.HOLD_WAIT)));
        answers(gate.asked(), taps);
    }

    private static void answers(List<Asked> asked, List<BenchTap> taps) {
        asked.stream().filter(a -> a.step() != null && !a.point().answer().isEmpty()).forEach(a -> {
            FieldDescriptor field = field(a.step().getDetails(), a.point().answer());
            if (field != null) {
                taps.add(entry("ask/" + a.point().answer(), field, a.step().getDetails()));
            }
        });
    }

    private static List<Choice> reasons(Say... words) {
        return java.util.Arrays.stream(words).map(w -> new Choice(w.text(), w.text())).toList();
    }

    private static void use(Step step, int use, List<BenchTap> taps) {
        String name = UseNames.of(step.getUses().get(use));
        boolean more = !step.getUses().get(use).getWeighings().isEmpty();
        taps.add(BenchTap.number("weigh", more ? Say.TAP_WEIGH_MORE.text(name) : Say.TAP_WEIGH.text(name), Rank.MAIN, GRAMS));
    }

    private void work(Step step, Trial trial, BenchGate gate, Targets targets, Instant now, List<BenchTap> taps) {
        boolean mend = false;
        for (int i = 0; i < step.getUses().size(); i++) {
            double grams = targets.addition(i).map(a -> a.value().likely()).orElse(0.0);
            if (grams >= Mixtures.NOTHING && !Places.over(step)) {
                boolean asked = targets.all().stream().anyMatch(a -> a.remark() != null && a.remark().severity() != org.flexwright.core.find.Severity.NOTE);
                mend |= asked;
                taps.add(BenchTap.number("correct/" + i, Say.TAP_CORRECT.text(FieldText.digits(grams), UseNames.of(step.getUses().get(i))),
                        asked ? Rank.MAIN : Rank.SIDE, GRAMS));
            }
        }
        if (step.getState() == StepState.PLANNED) {
            boolean gated = gate != null;
            taps.add(gated ? BenchTap.of("go", Say.TAP_GO.text(), gate.met() ? Kind.TOUCH : Kind.REASON, Rank.MAIN,
                    gate.met() ? List.of() : reasons(Say.AGAINST_EYE, Say.AGAINST_EXPERIENCE, Say.AGAINST_PURPOSE))
                    : BenchTap.touch("start", Say.TAP_START.text(Places.title(step)), Rank.MAIN));
        } else if (step.getState() == StepState.RUNNING) {
            taps.add(BenchTap.touch("finish", Say.TAP_FINISH.text(Places.title(step)), mend ? Rank.SIDE : Rank.MAIN));
        }
        if (!Places.over(step)) {
            taps.add(BenchTap.of("skip", Say.TAP_SKIP.text(), Kind.REASON, Rank.QUIET, reasons(Say.SKIP_NEED, Say.SKIP_ELSEWHERE, Say.SKIP_TIME)));
        }
        registries.findStepKind(step.getKind()).filter(k -> details(step, k)).ifPresent(k -> fields(step, k.timed(step, trial, now), taps));
        answers(gates.ahead(step, trial, now), taps);
    }

    static boolean details(Step step, StepKind kind) {
        return step.getDetails() != null && kind.details() != null && kind.details().isInstance(step.getDetails());
    }

    /** A tap for everything that happens in the step and can be given without a keyboard; what the plan or the clock says is offered. */
    private static void fields(Step step, Map<String, Double> timed, List<BenchTap> taps) {
        EObject details = step.getDetails();
        List<FieldDescriptor> fields = FieldDescriptors.ofClass(details.eClass());
        for (FieldDescriptor field : fields) {
            if (field.role() != FieldRole.ACTUAL || field.type() == FieldType.TABLE || field.type() == FieldType.LIST) {
                continue;
            }
            FieldDescriptor planned = fields.stream().filter(f -> f.name().equals(field.of())).findFirst().orElse(null);
            EStructuralFeature plan = planned == null ? null : details.eClass().getEStructuralFeature(planned.name());
            Object meant = plan == null ? null : details.eGet(plan);
            boolean empty = Figuring.entered(details, field, details.eClass().getEStructuralFeature(field.name())) == null;
            BenchTap tap = entry("field/" + field.name(), field, details);
            Double clock = timed.get(field.name());
            if (clock != null) {
                Object rounded = Double.valueOf(Math.rint(clock * 100) / 100); // a tap is no closer than half a second
                tap = tap.offering(field.print(rounded), Say.OFFER_CLOCK.text(field.print(rounded)));
            } else if (meant != null && !"".equals(meant) && planned.kind() == field.kind()) {
                tap = tap.offering(planned.print(meant), Say.OFFER_PLAN.text(planned.print(meant)));
            }
            taps.add(tap);
            if (empty && !tap.offered().isEmpty()) {
                taps.add(BenchTap.touch((clock != null ? "asTimed/" : "asPlanned/") + field.name(), Say.TAP_AS.text(field.label(), tap.said()), Rank.SIDE));
            }
        }
    }

    static FieldDescriptor field(EObject details, String name) {
        EStructuralFeature feature = details == null ? null : details.eClass().getEStructuralFeature(name);
        return feature == null ? null : FieldDescriptors.ofClass(details.eClass()).stream().filter(f -> f.name().equals(name)).findFirst().orElse(null);
    }

    private static BenchTap entry(String key, FieldDescriptor field, EObject details) {
        List<Choice> choices = switch (field.type()) {
            case FLAG -> List.of(new Choice(field.print(true), Say.YES.text()), new Choice(field.print(false), Say.NO.text()));
            case CHOICE -> field.choices().stream().map(c -> new Choice(c.literal(), c.label())).toList();
            default -> List.of();
        };
        Kind kind = switch (field.type()) {
            case QUANTITY, INTEGER -> Kind.NUMBER;
            case FLAG, CHOICE -> Kind.CHOICE;
            default -> Kind.WORDS;
        };
        boolean entered = Figuring.entered(details, field, details.eClass().getEStructuralFeature(field.name())) != null;
        return new BenchTap(key, field.label(), kind, entered || kind == Kind.WORDS ? Rank.QUIET : Rank.SIDE, field, choices, "", "");
    }

    private static void end(Trial trial, List<BenchTap> taps) {
        if (trial.getState() != TrialState.MADE) {
            taps.add(BenchTap.touch("made", Say.TAP_MADE.text(), Rank.MAIN));
        }
    }

    private static void contact(Trial trial, BenchPlace place, List<BenchTap> taps) {
        Instant contact = TimeLine.contactOf(trial);
        if (contact != null) {
            taps.add(BenchTap.number("contactAgo", Say.TAP_CONTACT_AGO.text(), Rank.QUIET, MINUTES));
        } else if (place.part() != Part.CAUTIONS && Contact.possible(trial)) {
            taps.add(BenchTap.touch("contact", Say.TAP_CONTACT.text(), place.part() == Part.WORK ? Rank.SIDE : Rank.QUIET));
        }
    }

    /** The room is asked once a session, while it is not known. */
    private static void room(Trial trial, BenchPlace place, Instant now, List<BenchTap> taps) {
        Step step = place.step() < trial.getSteps().size() ? trial.getSteps().get(place.step()) : null;
        Session session = step == null ? null : BenchRooms.session(trial, step, now);
        if (step != null && (session == null || session.getRoomC() == null)) {
            taps.add(room("roomC", FieldDescriptors.of(ModelPackage.Literals.SESSION__ROOM_C)));
        }
        if (step != null && (session == null || session.getRoomRh() == null)) {
            taps.add(room("roomRh", FieldDescriptors.of(ModelPackage.Literals.SESSION__ROOM_RH)));
        }
    }

    private static BenchTap room(String name, FieldDescriptor field) {
        return BenchTap.number("room/" + name, field.label(), Rank.QUIET, field.withOptional(false));
    }

    private static void always(Trial trial, boolean over, List<BenchTap> taps) {
        taps.add(BenchTap.of("note", Say.TAP_NOTE.text(), Kind.WORDS, Rank.QUIET, List.of()));
        taps.add(BenchTap.of("photo", Say.TAP_PHOTO.text(), Kind.PHOTO, Rank.QUIET, List.of()));
        taps.add(BenchTap.touch("odd", Say.TAP_ODD.text(), Rank.QUIET));
        taps.add(BenchTap.touch("undo", Say.TAP_UNDO.text(), Rank.QUIET));
        if (!over && trial.getState() != TrialState.MADE) {
            taps.add(BenchTap.of("dump", Say.TAP_DUMP.text(), Kind.REASON, Rank.QUIET,
                    reasons(Say.DUMP_SET, Say.DUMP_RATIO, Say.DUMP_STREAKS, Say.DUMP_SOFT, Say.DUMP_SPILLED)));
        }
    }
}
