package org.flexwright.mixing;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Estimate;
import org.flexwright.core.Figures;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.bench.GatePoint;
import org.flexwright.core.bench.StepMark;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.cause.SofterCause;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.StepAdvice;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.process.StepKinds;
import org.flexwright.core.process.StepTime;
import org.flexwright.core.process.WorkingTime;
import org.flexwright.core.process.WorkingTimes;
import org.flexwright.mixing.data.MixDetails;
import org.flexwright.mixing.data.MixingDataPackage;
import org.flexwright.mixing.data.WorkingTimeRule;
import org.flexwright.model.Provenance;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.osgi.service.component.annotations.Component;

/** Stirring A and B together: the clock starts at first contact. */
@Component(service = StepKind.class)
public final class MixStep implements StepKind {

    /** Id of this kind. */
    public static final String ID = "mixing.mix";

    private static final double DOUBLING = 2;

    @Override
    public String id() {
        return ID;
    }

    @Override
    public String title() {
        return "Mix";
    }

    @Override
    public String summary() {
        return "Stir until streaks are gone, scraping walls and bottom. The clock of the batch starts when A and B touch.";
    }

    @Override
    public EClass details() {
        return MixingDataPackage.Literals.MIX_DETAILS;
    }

    @Override
    public List<HazardPrompt> prompts(Step step, Trial trial) {
        return List.of(new HazardPrompt("mixing.heat", Say.PROMPT_HEAT.with(), Say.PROMPT_HEAT_CONTROL.with(), Source.commonPractice(), true));
    }

    @Override
    public Optional<WorkingTime> workingTime(Step step, Trial trial) {
        return step.getDetails() instanceof MixDetails details && positive(details.getWorkingTime()) ? Optional.of(stated(details)) : Optional.empty();
    }

    private static WorkingTime stated(MixDetails details) {
        Estimate minutes = Estimate.exact(details.getWorkingTime(), source(details));
        return WorkingTime.stated(minutes, words(details), growth(details), positive(details.getWorkingTimeMass()) ? details.getWorkingTimeMass() : null,
                details.getWorkingTimeC(), details.getWorkingTimeEnergy());
    }

    private static Source source(MixDetails details) {
        EAttribute feature = MixingDataPackage.Literals.MIX_DETAILS__WORKING_TIME;
        String said = Provenances.of(details, feature).map(Provenance::getSource).orElse(null);
        return switch (Provenances.origin(details, feature)) {
            case SHEET -> Source.sheet(said == null ? Say.TIME_SHEET.with().text() : said);
            case ASSUMED, ESTIMATED -> Source.commonPractice(Say.TIME_ASSUMED.with().text());
            default -> Source.ownRecord(said == null ? Say.TIME_TYPED.with().text() : said);
        };
    }

    private static String words(MixDetails details) {
        Double growth = growth(details);
        return switch (details.getWorkingTimeRule()) {
            case UNSTATED -> growth == null ? "" : Say.ENDS_GROWN.with(Figures.of(growth, "")).text();
            case VISCOSITY_DOUBLES -> Say.ENDS_DOUBLED.with().text();
            case VISCOSITY_LIMIT -> growth == null ? Say.ENDS_LIMIT.with().text() : Say.ENDS_GROWN.with(Figures.of(growth, "")).text();
            case WARMING -> Say.ENDS_WARM.with().text();
            case GELS -> Say.ENDS_GEL.with().text();
        };
    }

    private static Double growth(MixDetails details) {
        if (details.getWorkingTimeRule() == WorkingTimeRule.VISCOSITY_DOUBLES) {
            return DOUBLING;
        }
        Double growth = details.getWorkingTimeGrowth();
        return growth != null && growth > 1 ? growth : null;
    }

    @Override
    public List<SofterCause> softer(Step step, Trial trial, Trial than) {
        return SofterMixing.of(step, trial);
    }

    @Override
    public List<StepAdvice> advice(Step step, Trial trial, StepKinds kinds) {
        boolean says = workingTime(step, trial).isPresent();
        return WorkingTimes.of(trial, kinds).filter(time -> says && time.isCarried()).map(MixStep::here).map(List::of).orElse(List.of());
    }

    private static StepAdvice here(WorkingTime time) {
        Source source = time.source();
        return new StepAdvice("workingTimeHere", Say.TIME_HERE.with(time.conditions()).text(), time.minutes(), "min",
                time.ends().isEmpty() ? null : Say.TIME_HERE_ENDS.note(source, time.text(), time.conditions(), time.ends()));
    }

    @Override
    public Optional<StepTime> time(Step step, Trial trial) {
        Double planned = step.getDetails() instanceof MixDetails details ? details.getPlannedMinutes() : null;
        return Optional.of(StepTime.hands(planned == null ? step.getPlannedDuration() : planned, StepTime.usual(3, 5, 10)));
    }

    private static boolean positive(Double value) {
        return value != null && value > 0;
    }

    @Override
    public List<GatePoint> gate(Step step, Trial trial, Instant now) {
        Boolean scraped = step.getDetails() instanceof MixDetails details ? details.getScraped() : null;
        Message how = scraped == null ? Say.GATE_SCRAPED_UNKNOWN.with() : scraped ? Say.GATE_SCRAPED_YES.with() : Say.GATE_SCRAPED_NO.with();
        return List.of(GatePoint.after("scraped", Say.GATE_SCRAPED.with().text(), GatePoint.of(scraped), how, Source.commonPractice()).answeredBy("scraped"));
    }

    @Override
    public List<StepMark> marks(Step step, Trial trial) {
        StepMark end = step.getDetails() instanceof MixDetails details
                ? StepMark.end("stirred", Say.MARK_STIRRED.with().text(), step, details.getPlannedMinutes(), Source.ownRecord(Say.MARK_PLAN.with().text())) : null;
        return end == null ? List.of() : List.of(end);
    }

    @Override
    public Map<String, Double> timed(Step step, Trial trial, Instant now) {
        return StepMark.minutes(step, now).map(minutes -> Map.of("minutes", minutes)).orElse(Map.of());
    }
}
