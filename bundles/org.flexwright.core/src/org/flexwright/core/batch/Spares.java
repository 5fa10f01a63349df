package org.flexwright.core.batch;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.field.FieldText;
import org.flexwright.model.Part;
import org.flexwright.model.PieceKind;
import org.flexwright.model.Project;
import org.flexwright.model.Recipe;
import org.flexwright.model.Trial;
import org.flexwright.model.TrialState;
import org.flexwright.numerics.Interval;
import org.flexwright.numerics.Intervals;

/**
 * Parts made on top against rejects, from the own record of earlier parts of this recipe.
 *
 * @param rejects earlier parts that failed
 * @param made    earlier parts
 * @param share   share of rejects 0..1 with its 95 % interval (Clopper and Pearson 1934); null when there are no earlier parts
 * @param number  spares proposed: what the likely share asks for, and one at least (common practice, no source)
 * @param most    spares that the upper end of the share would ask for; -1 when nothing tells, or no number would do
 */
public record Spares(int rejects, int made, Estimate share, int number, int most) {
    private static final double LEVEL = 0.95;
    /** A share from which no reasonable number of spares helps; own choice. */
    private static final double HOPELESS = 0.9;

    /** From the parts of the trial the recipe comes from and of all batches of any version of it. */
    public static Spares of(Project project, Recipe recipe, int wanted) {
        List<Part> parts = earlier(project, recipe).flatMap(trial -> trial.getParts().stream()).filter(part -> part.getPieceKind() == PieceKind.PART).toList();
        int rejects = (int) parts.stream().filter(Spares::rejected).count();
        if (parts.isEmpty()) {
            return new Spares(0, 0, null, 1, -1);
        }
        Interval interval = Intervals.clopperPearson(rejects, parts.size(), LEVEL);
        double likely = (double) rejects / parts.size();
        Estimate share = new Estimate(interval.low(), likely, interval.high(), Source.ownRecord(say("spares.record", rejects, parts.size())));
        int number = likely > HOPELESS ? wanted : Math.max(1, extra(wanted, likely));
        return new Spares(rejects, parts.size(), share, number, interval.high() > HOPELESS ? -1 : extra(wanted, interval.high()));
    }

    /** A part that failed, or whose trial was given up. */
    static boolean rejected(Part part) {
        return part.isFailed() || part.eContainer() instanceof Trial trial
                && (trial.getState() == TrialState.DISCARDED || trial.getState() == TrialState.FAILED);
    }

    private static Stream<Trial> earlier(Project project, Recipe recipe) {
        Stream<Trial> from = project.getRecipes().stream().filter(r -> recipe.getCode().equalsIgnoreCase(r.getCode())).map(Recipe::getFrom);
        Stream<Trial> pots = project.getBatches().stream().filter(b -> b.getRecipe() != null && recipe.getCode().equalsIgnoreCase(b.getRecipe().getCode()))
                .flatMap(b -> b.getPots().stream());
        return Stream.concat(from, pots).filter(Objects::nonNull).distinct();
    }

    private static int extra(int wanted, double share) {
        // a billionth forgives what the division lost
        return (int) Math.ceil(wanted / (1 - share) - 1e-9) - wanted;
    }

    /** What the number rests on, in a sentence. */
    public String why() {
        if (share == null) {
            return say("spares.none");
        }
        String percents = FieldText.range(100 * share.low(), 100 * share.high());
        return most < 0 ? say("spares.open", rejects, made, percents) : say("spares.share", rejects, made, percents, most);
    }

    private static String say(String key, Object... args) {
        return Message.of(Spares.class, key, args).text();
    }
}
