package org.flexwright.core.rubber;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

import org.flexwright.core.Figures;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.find.Remark;
import org.flexwright.core.find.Severity;
import org.flexwright.core.rubber.RubberFit.Coefficient;

/** Fits of rubber laws in words. */
public final class FitWords {
    /** What every fit rests on. */
    public static final Source SOURCE = Source.derived("least squares on nominal stress, incompressible; stability by Drucker's condition in plane stress");

    private static final int FEW = 5;
    private static final int DIGITS = 3;
    private static final int LEAST_DIGITS = 4;

    private FitWords() {
    }

    /** That a fit is rejected, by the name of its law and where it gives way; empty when it is stable over the stretches used. */
    public static Optional<Message> rejected(RubberFit fit) {
        return fit.limit().map(limit -> say("rejected", fit.form().title(), figure(limit.stretch()), limit.loading().title(), figure(fit.law().youngsModulus()) + " MPa"));
    }

    /** What would help instead of a rejected fit. */
    public static Message remedy() {
        return say("rejected.remedy");
    }

    /** What to know about a fit. */
    public static List<Remark> remarks(RubberFit fit) {
        List<Remark> all = new ArrayList<>();
        if (fit.loadings().size() == 1 && fit.form() != RubberForm.NEO_HOOKE) {
            all.add(caution("one-loading", fit.loadings().get(0).title()));
        }
        if (fit.bendsOtherwise()) {
            all.add(caution("bends", fit.form().title()));
        }
        if (fit.coefficients().stream().allMatch(c -> c.error().isEmpty())) {
            all.add(caution("no-errors", fit.points().size(), fit.coefficients().size()));
        }
        String idle = fit.coefficients().stream().filter(c -> c.band().isPresent() && c.band().get().low() <= 0 && c.band().get().high() >= 0).map(Coefficient::name)
                .collect(Collectors.joining(", "));
        if (!idle.isEmpty()) {
            all.add(note(fit.form().terms() > 0 ? "together" : "idle", idle));
        }
        if (fit.closer() != null) {
            all.add(note("closer", figure(fit.closer().rms()), figure(fit.rms()), figure(fit.closer().limit().stretch()), fit.closer().limit().loading().title()));
        }
        if (fit.starts() > 0 && fit.reached() < FEW) {
            all.add(caution("few-starts", fit.reached(), fit.starts()));
        }
        return all;
    }

    /** A coefficient with its band: {@code 0.363 MPa (0.307 to 0.419 MPa)}. */
    public static String text(Coefficient c) {
        String unit = c.unit().isEmpty() ? "" : " " + c.unit();
        return number(c.value(), digits(c)) + unit + c.band().map(b -> " (" + number(b.low(), DIGITS) + " to " + number(b.high(), DIGITS) + unit + ")").orElse("");
    }

    /** Over which stretches and loadings a fit speaks. */
    public static Message reach(RubberFit fit) {
        return say("reach", fit.loadings().stream().map(loading -> {
            DoubleSummaryStatistics own = fit.points().stream().filter(p -> p.loading() == loading).mapToDouble(RubberFit.Point::stretch).summaryStatistics();
            return say("reach.one", figure(own.getMin()), figure(own.getMax()), loading.title()).text();
        }).collect(Collectors.joining(", ")));
    }

    /** As many digits as the error leaves a meaning, but of coefficients four at least: they go together, and rounded ones draw another curve. */
    private static int digits(Coefficient c) {
        int least = c.name().equals(RubberFit.YOUNG) ? DIGITS - 1 : LEAST_DIGITS;
        if (c.error().isEmpty() || c.value() == 0 || c.error().getAsDouble() == 0) {
            return least;
        }
        return (int) Math.clamp(Math.ceil(Math.log10(Math.abs(c.value()) / c.error().getAsDouble())) + 1, least, 6);
    }

    /** Small coefficients as a power of ten, which no reader miscounts. */
    static String number(double value, int digits) {
        if (value != 0 && Math.abs(value) < 1e-3) {
            String[] parts = String.format(Locale.ROOT, "%." + (digits - 1) + "e", value).split("e");
            return parts[0] + "e" + Integer.parseInt(parts[1]);
        }
        return Figures.of(value, "", digits);
    }

    static String figure(double value) {
        return number(value, DIGITS);
    }

    private static Message say(String key, Object... arguments) {
        return Message.of(FitWords.class, key, arguments);
    }

    private static Remark note(String key, Object... arguments) {
        return new Remark(Severity.NOTE, say(key, arguments), SOURCE);
    }

    private static Remark caution(String key, Object... arguments) {
        return new Remark(Severity.CAUTION, say(key, arguments), SOURCE);
    }
}
