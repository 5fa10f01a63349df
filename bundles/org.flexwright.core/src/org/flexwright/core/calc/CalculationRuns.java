package org.flexwright.core.calc;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.flexwright.core.Message;
import org.flexwright.core.field.FeatureValues;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldType;
import org.flexwright.core.field.FieldUnits;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.field.Provenances;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.model.CalculationRun;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Origin;
import org.flexwright.model.Provenance;
import org.flexwright.model.RunInput;
import org.flexwright.model.RunResult;
import org.flexwright.model.Trial;
import org.flexwright.quantity.QuantityKind;
import org.flexwright.quantity.Unit;
import org.flexwright.quantity.Units;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;

/** Calculations kept in a trial: what went in, what came out or why nothing did. They are never computed again by themselves. */
public final class CalculationRuns {
    /** Relative difference below which two numbers are the same input: rounding in a change of units is far smaller. */
    private static final double SAME = 1e-9;

    private CalculationRuns() {
    }

    /**
     * A feature of the model an input was taken from.
     *
     * @param owner   the object
     * @param feature its feature
     */
    public record Binding(EObject owner, EStructuralFeature feature) {
        public Binding {
            Objects.requireNonNull(owner, "owner");
            Objects.requireNonNull(feature, "feature");
        }
    }

    /** Keeps a result, or a refusal, in one step that can be undone. Inputs bound in the form are remembered with their place. */
    public static CalculationRun keep(ProjectSession session, Trial trial, Calculation<?, ?> calculation, CalculationResult result, FormModel form) {
        Map<String, Binding> bound = new LinkedHashMap<>();
        form.fields().stream().map(FieldDescriptor::name).filter(form::isBound).forEach(n -> bound.put(n, new Binding(form.owner(n), form.feature(n))));
        return keep(session, trial, calculation, result, bound);
    }

    /** The same with the places of inputs given; inputs not named were typed or by default. */
    public static CalculationRun keep(ProjectSession session, Trial trial, Calculation<?, ?> calculation, CalculationResult result, Map<String, Binding> bound) {
        CalculationRun run = ModelFactory.eINSTANCE.createCalculationRun();
        run.setCalculation(result.id());
        run.setVersion(String.valueOf(result.version()));
        run.setProgramVersion(programVersion());
        result.inputs().forEach((name, input) -> run.getInputs().add(input(session, name, input, bound.get(name))));
        result.results().forEach((name, value) -> run.getResults().add(result(name, value)));
        run.setRefusal(result.refused() == null ? null : Message.of(CalculationRuns.class, "refusal", result.refused().why(), result.refused().remedy()).text());
        session.execute(Message.of(CalculationRuns.class, "keep", calculation.info().title()).text(), edit -> {
            run.setId(edit.newId());
            run.setAt(edit.now());
            edit.add(trial, ModelPackage.Literals.TRIAL__CALCULATIONS, run);
        });
        return run;
    }

    private static String programVersion() {
        Bundle bundle = FrameworkUtil.getBundle(CalculationRuns.class);
        return bundle == null ? null : bundle.getVersion().toString();
    }

    private static RunInput input(ProjectSession session, String name, ResultInput input, Binding binding) {
        RunInput kept = ModelFactory.eINSTANCE.createRunInput();
        kept.setName(name);
        kept.setUnit(input.field().unit().isEmpty() ? null : input.field().unit());
        if (input.value() instanceof Number number) {
            kept.setValue(number.doubleValue());
        }
        kept.setText(input.typed().isEmpty() ? null : input.value() instanceof Number ? input.typed() : input.understood());
        kept.setOrigin(binding != null ? Provenances.origin(binding.owner(), binding.feature()) : input.byDefault() ? Origin.ASSUMED : Origin.TYPED);
        kept.setBoundTo(binding == null ? null : session.address(binding.owner()) + "#" + binding.feature().getName());
        return kept;
    }

    private static RunResult result(String name, ResultValue value) {
        RunResult kept = ModelFactory.eINSTANCE.createRunResult();
        kept.setName(name);
        kept.setLow(value.low());
        kept.setLikely(value.likely());
        kept.setHigh(value.high());
        kept.setText(value.text());
        kept.setUnit(value.unit().isEmpty() ? null : value.unit());
        kept.setSource(value.source().display());
        return kept;
    }

    /** Why a kept run no longer says what the calculation would say now; empty when it is current. One sentence each. */
    public static List<String> stale(ProjectSession session, CalculationRun run, Calculation<?, ?> calculation) {
        List<String> reasons = new ArrayList<>();
        if (calculation == null) {
            reasons.add(words("stale.absent", run.getCalculation()));
        } else if (!String.valueOf(calculation.info().version()).equals(run.getVersion())) {
            reasons.add(words("stale.version", run.getVersion(), String.valueOf(calculation.info().version())));
        }
        for (RunInput input : run.getInputs()) {
            if (input.getBoundTo() != null) {
                staleInput(session, input).ifPresent(reasons::add);
            }
        }
        return List.copyOf(reasons);
    }

    private static Optional<String> staleInput(ProjectSession session, RunInput input) {
        int hash = input.getBoundTo().lastIndexOf('#');
        Optional<EObject> owner = session.find(input.getBoundTo().substring(0, hash));
        EStructuralFeature feature = owner.map(o -> o.eClass().getEStructuralFeature(input.getBoundTo().substring(hash + 1))).orElse(null);
        if (feature == null) {
            return Optional.of(words("stale.gone", input.getName()));
        }
        Object now = FeatureValues.get(owner.get(), feature);
        if (feature instanceof EAttribute attribute) {
            FieldDescriptor field = FieldDescriptors.of(attribute);
            boolean same = now instanceof Number number && input.getValue() != null ? sameNumber(input, field, number.doubleValue())
                    : now == null ? input.getValue() == null && input.getText() == null : field.print(now).equals(input.getText());
            return same ? Optional.empty() : Optional.of(words("stale.changed", input.getName(), field.print(now).isEmpty() ? words("nothing") : field.print(now)));
        }
        return Optional.of(words("stale.gone", input.getName()));
    }

    private static boolean sameNumber(RunInput input, FieldDescriptor field, double now) {
        double inUnit = now;
        if (field.type() == FieldType.QUANTITY && input.getUnit() != null) {
            Optional<Unit> wanted = Units.find(field.kind(), input.getUnit());
            inUnit = wanted.map(u -> u.fromCanonical(FieldUnits.unit(field.kind(), field.unit()).toCanonical(now))).orElse(now);
        }
        return Math.abs(inUnit - input.getValue()) <= SAME * Math.max(Math.abs(inUnit), Math.abs(input.getValue()));
    }

    /**
     * Sets a feature to a kept result, in the feature's unit, with that origin and half its band as uncertainty, in one step.
     *
     * @throws IllegalArgumentException when the run has no such number or the feature's field does not accept it: the sentence says why
     */
    public static void useValue(ProjectSession session, CalculationRun run, String name, EObject owner, EAttribute feature) {
        RunResult result = run.getResults().stream().filter(r -> name.equals(r.getName()) && r.getLikely() != null).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(words("use.none", run.getCalculation(), name)));
        FieldDescriptor field = FieldDescriptors.of(feature);
        double value = inFieldUnit(result, result.getLikely(), field);
        double low = inFieldUnit(result, result.getLow(), field);
        double high = inFieldUnit(result, result.getHigh(), field);
        if (field.read(field.print(value)) instanceof org.flexwright.core.field.FieldInput.Rejected rejected) {
            throw new IllegalArgumentException(rejected.sentence());
        }
        session.execute(words("use", field.label()), edit -> {
            edit.set(owner, feature, value);
            Provenance provenance = Provenances.keep(edit, owner, feature, Origin.CALCULATED, words("use.source", run.getCalculation(), name, result.getSource()), "");
            if (provenance != null && high > low) {
                provenance.setUncertainty((high - low) / 2);
            }
        });
    }

    private static double inFieldUnit(RunResult result, double value, FieldDescriptor field) {
        Unit to = FieldUnits.unit(field.kind(), field.unit());
        String symbol = result.getUnit() == null ? "" : result.getUnit();
        if (symbol.isEmpty() && field.kind() == QuantityKind.NUMBER) {
            return value;
        }
        Unit from = Units.find(field.kind(), symbol)
                .orElseThrow(() -> new IllegalArgumentException(words("use.unit", result.getName(), symbol.isEmpty() ? words("noUnit") : symbol, field.label())));
        return from.equals(to) ? value : to.fromCanonical(from.toCanonical(value));
    }

    private static String words(String key, Object... args) {
        return Message.of(CalculationRuns.class, key, args).text();
    }
}
