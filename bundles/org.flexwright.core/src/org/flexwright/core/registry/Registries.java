package org.flexwright.core.registry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EPackage;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationRunner;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldInput;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.FindingService;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.ProcessKind;
import org.flexwright.core.process.PromptSource;
import org.flexwright.core.process.StepAdvice;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.process.StepKinds;
import org.flexwright.core.process.StepPlot;
import org.flexwright.core.property.Approximation;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertyEstimator;
import org.flexwright.core.property.PropertyService;
import org.flexwright.core.property.PropertySet;
import org.flexwright.core.property.ResultWord;
import org.flexwright.core.recording.RecordingKind;
import org.flexwright.core.session.DetailsPackage;
import org.flexwright.model.PropertyKey;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;

/**
 * Everything the plugins offer. An id is taken once; what breaks while being taken in is left out and named in {@link #failures()}; the
 * rest works on. Lists are in order of id.
 */
@Component(service = Registries.class)
public final class Registries implements StepKinds {
    private final Map<String, Calculation<?, ?>> calculations;
    private final Map<String, StepKind> stepKinds;
    private final Map<String, ProcessKind> processKinds;
    private final Map<String, RecordingKind> recordingKinds;
    private final Map<String, FindingRule> rules;
    private final PropertyCatalogue properties;
    private final List<GuardedEstimator> estimators;
    private final PropertyService estimates;
    private final List<DetailsPackage> packages;
    private final List<Failure> failures;
    private final List<PromptSource> promptSources;
    private final List<PropertySet> propertySets;
    @Reference(policy = ReferencePolicy.DYNAMIC, policyOption = ReferencePolicyOption.GREEDY)
    private volatile List<ActivationFailures> notStarted = List.of();

    /** Takes in what is there. Tests call it with what they need. */
    @Activate
    public Registries(
            @Reference(service = Calculation.class, cardinality = ReferenceCardinality.MULTIPLE, policyOption = ReferencePolicyOption.GREEDY) List<Calculation<?, ?>> calculations,
            @Reference(policyOption = ReferencePolicyOption.GREEDY) List<StepKind> stepKinds,
            @Reference(policyOption = ReferencePolicyOption.GREEDY) List<ProcessKind> processKinds,
            @Reference(policyOption = ReferencePolicyOption.GREEDY) List<FindingRule> rules,
            @Reference(policyOption = ReferencePolicyOption.GREEDY) List<PropertySet> propertySets,
            @Reference(policyOption = ReferencePolicyOption.GREEDY) List<PropertyEstimator> estimators,
            @Reference(policyOption = ReferencePolicyOption.GREEDY) List<PromptSource> promptSources,
            @Reference(policyOption = ReferencePolicyOption.GREEDY) List<RecordingKind> recordingKinds) {
        this.promptSources = List.copyOf(promptSources);
        this.propertySets = List.copyOf(propertySets);
        Intake intake = new Intake();
        this.calculations = intake.byId(calculations, c -> c.info().id(), Registries::probe);
        this.stepKinds = intake.byId(stepKinds, StepKind::id, Registries::probe);
        this.processKinds = intake.byId(processKinds, ProcessKind::id, Registries::probe);
        this.recordingKinds = intake.byId(recordingKinds, RecordingKind::id, Registries::probe);
        this.rules = intake.byId(rules, FindingRule::id, Registries::probe);
        this.properties = catalogue(intake, propertySets);
        List<GuardedEstimator> working = new ArrayList<>();
        estimators.forEach(e -> intake.guarded(e, () -> working.add(new GuardedEstimator(e, Objects.requireNonNull(e.rank(), "rank")))));
        this.estimators = List.copyOf(working);
        this.estimates = new PropertyService(working);
        this.packages = packages(this.stepKinds.values(), this.recordingKinds.values(), this.propertySets);
        this.failures = List.copyOf(intake.failures());
    }

    /** Takes in what is there, without prompts for materials and without recordings. */
    public Registries(List<Calculation<?, ?>> calculations, List<StepKind> stepKinds, List<ProcessKind> processKinds, List<FindingRule> rules,
            List<PropertySet> propertySets, List<PropertyEstimator> estimators) {
        this(calculations, stepKinds, processKinds, rules, propertySets, estimators, List.of(), List.of());
    }

    /** Takes in what is there, without recordings. */
    public Registries(List<Calculation<?, ?>> calculations, List<StepKind> stepKinds, List<ProcessKind> processKinds, List<FindingRule> rules,
            List<PropertySet> propertySets, List<PropertyEstimator> estimators, List<PromptSource> promptSources) {
        this(calculations, stepKinds, processKinds, rules, propertySets, estimators, promptSources, List.of());
    }

    /** Where a reading really belongs when the piece does not allow what was asked; the first plugin that has something to say. */
    public Optional<PropertySet.Redirect> redirect(PropertyKey key, Double thickness) {
        return propertySets.stream().flatMap(set -> set.redirect(key, thickness).stream()).findFirst();
    }

    /** Class of the details kept with a measurement of that property; empty when it has none or its plugin is absent. */
    public Optional<EClass> measurementDetails(String property) {
        return propertySets.stream().map(set -> set.details(property)).filter(Objects::nonNull).findFirst();
    }

    /** What a measured value would be about as other properties; asked only when a person wants to know. */
    public List<Approximation> about(String property, double value) {
        return propertySets.stream().flatMap(set -> set.about(property, value).stream()).toList();
    }

    /** The usual cautions for a step: those of its kind and those for what is in it, each once. */
    public List<HazardPrompt> prompts(Step step, Trial trial) {
        Map<String, HazardPrompt> all = new LinkedHashMap<>();
        findStepKind(step.getKind()).ifPresent(kind -> kind.prompts(step, trial).forEach(p -> all.putIfAbsent(p.id(), p)));
        promptSources.forEach(source -> source.prompts(step, trial).forEach(p -> all.putIfAbsent(p.id(), p)));
        return List.copyOf(all.values());
    }

    /** What a step says about itself right now; empty when its plugin is absent. */
    public List<StepAdvice> advice(Step step, Trial trial) {
        return findStepKind(step.getKind()).map(kind -> kind.advice(step, trial, this)).orElse(List.of());
    }

    /** Everything that can be drawn of a trial's steps. */
    public List<StepPlot> plots(Trial trial) {
        return trial.getSteps().stream().flatMap(step -> findStepKind(step.getKind()).stream().flatMap(kind -> kind.plots(step, trial, properties).stream())).toList();
    }

    private static void probe(Calculation<?, ?> calculation) {
        CalculationRunner.results(calculation);
        for (FieldDescriptor input : CalculationRunner.inputs(calculation)) {
            if (!input.def().isEmpty() && input.read(input.def()) instanceof FieldInput.Rejected rejected) {
                throw new IllegalArgumentException(rejected.sentence());
            }
        }
    }

    private static void probe(StepKind kind) {
        Objects.requireNonNull(kind.title(), "title");
        Objects.requireNonNull(kind.summary(), "summary");
        if (kind.details() != null) {
            FieldDescriptors.ofClass(kind.details());
        }
    }

    private static void probe(ProcessKind kind) {
        Objects.requireNonNull(kind.title(), "title");
        Objects.requireNonNull(kind.summary(), "summary");
        Objects.requireNonNull(kind.steps(), "steps");
        Objects.requireNonNull(kind.factors(), "factors");
    }

    private static void probe(RecordingKind kind) {
        Objects.requireNonNull(kind.title(), "title");
        Objects.requireNonNull(kind.summary(), "summary");
        Objects.requireNonNull(kind.format(), "format");
        Objects.requireNonNull(kind.channels(), "channels");
        if (kind.details() != null) {
            FieldDescriptors.ofClass(kind.details());
        }
    }

    private static void probe(FindingRule rule) {
        Objects.requireNonNull(rule.title(), "title");
        Objects.requireNonNull(rule.scope(), "scope");
    }

    private static PropertyCatalogue catalogue(Intake intake, List<PropertySet> sets) {
        Map<String, PropertyDef> byId = new LinkedHashMap<>();
        for (PropertySet set : sets) {
            intake.guarded(set, () -> intake.byId(set.properties(), PropertyDef::id, p -> { }).forEach((id, property) -> {
                if (byId.putIfAbsent(id, property) != null) {
                    intake.duplicate(id, set);
                }
            }));
        }
        return new Properties(byId.values().stream().sorted(Comparator.comparing(PropertyDef::title)).toList());
    }

    private record Properties(List<PropertyDef> all) implements PropertyCatalogue {
        @Override
        public Optional<PropertyDef> find(String id) {
            return all.stream().filter(p -> p.id().equals(id)).findFirst();
        }
    }

    private static List<DetailsPackage> packages(Collection<StepKind> steps, Collection<RecordingKind> recordings, List<PropertySet> sets) {
        Map<String, DetailsPackage> packages = new LinkedHashMap<>();
        steps.forEach(kind -> add(packages, kind.details(), kind));
        recordings.forEach(kind -> add(packages, kind.details(), kind));
        sets.forEach(set -> details(set).forEach(details -> add(packages, details, set)));
        return List.copyOf(packages.values());
    }

    /** A set that broke while being taken in brings nothing. */
    private static List<EClass> details(PropertySet set) {
        try {
            return set.properties().stream().map(property -> set.details(property.id())).filter(Objects::nonNull).distinct().toList();
        } catch (RuntimeException e) {
            return List.of();
        }
    }

    private static void add(Map<String, DetailsPackage> packages, EClass details, Object kind) {
        if (details != null) {
            EPackage ePackage = details.getEPackage();
            Owner owner = Owner.of(kind.getClass());
            packages.putIfAbsent(ePackage.getNsURI(), new DetailsPackage(ePackage, owner.plugin(), owner.version()));
        }
    }

    /** All calculations. */
    public List<Calculation<?, ?>> calculations() {
        return List.copyOf(calculations.values());
    }

    /** The calculation with that id. */
    public Optional<Calculation<?, ?>> findCalculation(String id) {
        return Optional.ofNullable(calculations.get(id));
    }

    /** All step kinds. */
    public List<StepKind> stepKinds() {
        return List.copyOf(stepKinds.values());
    }

    @Override
    public Optional<StepKind> findStepKind(String id) {
        return Optional.ofNullable(stepKinds.get(id));
    }

    /** All process kinds. */
    public List<ProcessKind> processKinds() {
        return List.copyOf(processKinds.values());
    }

    /** The process kind with that id; empty when its plugin is absent. */
    public Optional<ProcessKind> findProcessKind(String id) {
        return Optional.ofNullable(processKinds.get(id));
    }

    /** All recording kinds. */
    public List<RecordingKind> recordingKinds() {
        return List.copyOf(recordingKinds.values());
    }

    /** The recording kind with that id; empty when its plugin is absent. */
    public Optional<RecordingKind> findRecordingKind(String id) {
        return Optional.ofNullable(recordingKinds.get(id));
    }

    /** All finding rules. */
    public List<FindingRule> rules() {
        return List.copyOf(rules.values());
    }

    /** The rule with that id. */
    public Optional<FindingRule> findRule(String id) {
        return Optional.ofNullable(rules.get(id));
    }

    /** All properties. */
    public PropertyCatalogue properties() {
        return properties;
    }

    /** The property with that id; empty when its plugin is absent. */
    public Optional<PropertyDef> findProperty(String id) {
        return properties.find(id);
    }

    /** What makers call results, of the properties that are here. */
    public List<ResultWord> resultWords() {
        return propertySets.stream().flatMap(set -> set.resultWords().stream()).filter(word -> properties.find(word.property()).isPresent()).toList();
    }

    /** What is known or estimated of materials. */
    public PropertyService estimates() {
        return estimates;
    }

    /** A finding service asking all rules. */
    public FindingService findings() {
        return new FindingService(rules(), properties, this);
    }

    /** Packages of details the step and recording kinds bring, for opening projects. */
    public List<DetailsPackage> packages() {
        return packages;
    }

    /** What could not be taken in or did not start, and why. */
    public List<Failure> failures() {
        List<Failure> all = new ArrayList<>(failures);
        estimators.forEach(e -> e.failure().ifPresent(all::add));
        notStarted.forEach(source -> all.addAll(source.now()));
        return List.copyOf(all);
    }
}
