package org.flexwright.core.registry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Calculation;
import org.flexwright.core.calc.CalculationInfo;
import org.flexwright.core.calc.Field;
import org.flexwright.core.calc.Outcome;
import org.flexwright.core.find.Finding;
import org.flexwright.core.find.FindingRule;
import org.flexwright.core.find.RuleContext;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.property.FamilyReach;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertyEstimator;
import org.flexwright.core.property.PropertySet;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.TargetSheet;
import org.flexwright.quantity.QuantityKind;
import org.junit.jupiter.api.Test;

class RegistriesTest {
    record Nothing() {
    }

    record Bad(double undescribed) {
    }

    record Twice(@Field(help = "x") double x) {
    }

    private static <I extends Record> Calculation<I, Nothing> calculation(String id, Class<I> inputs) {
        return new Calculation<>() {
            @Override
            public CalculationInfo info() {
                return new CalculationInfo(id, id, 1, "", Source.commonPractice(), "");
            }

            @Override
            public Class<I> inputType() {
                return inputs;
            }

            @Override
            public Class<Nothing> resultType() {
                return Nothing.class;
            }

            @Override
            public Outcome<Nothing> run(I in) {
                return Outcome.done(new Nothing());
            }
        };
    }

    private record Kind(String id, EClass details) implements StepKind {
        @Override
        public String title() {
            return id;
        }

        @Override
        public String summary() {
            return id;
        }
    }

    private static final class BrokenKind implements StepKind {
        @Override
        public String id() {
            throw new IllegalStateException("half installed");
        }

        @Override
        public String title() {
            return "";
        }

        @Override
        public String summary() {
            return "";
        }

        @Override
        public EClass details() {
            return null;
        }
    }

    private static final class BrokenClass implements FindingRule {
        @Override
        public String id() {
            throw new NoClassDefFoundError("some.other.Thing");
        }

        @Override
        public String title() {
            return "";
        }

        @Override
        public void check(RuleContext context, Consumer<Finding> out) {
        }
    }

    private static PropertyDef property(String id, String title) {
        return new PropertyDef(id, title, QuantityKind.FORCE, false, Set.of(), "", Source.commonPractice());
    }

    private static Registries of(List<Calculation<?, ?>> calculations, List<StepKind> steps, List<FindingRule> rules, List<PropertySet> sets) {
        return new Registries(calculations, steps, List.of(), rules, sets, List.of());
    }

    @Test
    void entriesAreFoundByIdInOrder() {
        Registries registries = of(List.<Calculation<?, ?>>of(calculation("b.two", Twice.class), calculation("a.one", Nothing.class)), List.of(), List.of(), List.of());
        assertEquals(List.of("a.one", "b.two"), registries.calculations().stream().map(c -> c.info().id()).toList());
        assertTrue(registries.findCalculation("b.two").isPresent());
        assertTrue(registries.findCalculation("b.three").isEmpty());
        assertEquals(List.of(), registries.failures());
    }

    record WrongDefault(@Field(help = "x", def = "-1", min = 0) double x) {
    }

    @Test
    void aCalculationWhoseOwnDefaultIsNotAcceptedIsLeftOut() {
        Registries registries = of(List.of(calculation("a.wrong", WrongDefault.class)), List.of(), List.of(), List.of());
        assertEquals(List.of(), registries.calculations());
        assertTrue(registries.failures().get(0).why().contains("X must be at least 0; got -1."), registries.failures().toString());
    }

    @Test
    void theSecondOwnerOfAnIdIsLeftOutAndNamed() {
        Kind first = new Kind("x.same", null);
        Registries registries = of(List.of(), List.of(first, new Kind("x.same", ModelPackage.Literals.STEP)), List.of(), List.of());
        assertSame(first, registries.findStepKind("x.same").orElseThrow());
        assertEquals(1, registries.failures().size());
        assertTrue(registries.failures().get(0).why().contains("x.same"));
        assertEquals("x.same", registries.failures().get(0).what());
    }

    @Test
    void brokenOnesDoNotTakeTheOthersDown() {
        Registries registries = of(List.<Calculation<?, ?>>of(calculation("a.bad", Bad.class), calculation("a.good", Twice.class)), List.of(new BrokenKind(), new Kind("x.good", null)),
                List.of(new BrokenClass()), List.of(() -> {
                    throw new IllegalStateException("no table");
                }));
        assertEquals(List.of("a.good"), registries.calculations().stream().map(c -> c.info().id()).toList());
        assertEquals(List.of("x.good"), registries.stepKinds().stream().map(StepKind::id).toList());
        assertEquals(List.of(), registries.rules());
        assertEquals(4, registries.failures().size());
        assertTrue(registries.failures().stream().anyMatch(f -> f.why().contains("half installed")), registries.failures().toString());
        assertTrue(registries.failures().stream().anyMatch(f -> f.why().contains("undescribed")), registries.failures().toString());
        assertTrue(registries.failures().stream().allMatch(f -> f.plugin().startsWith("org.flexwright.core")), registries.failures().toString());
    }

    @Test
    void propertiesAreUniqueOverAllPluginsAndSortedByTitle() {
        Registries registries = of(List.of(), List.of(), List.of(),
                List.of(() -> List.of(property("t.a", "Zeta"), property("t.b", "Alpha")), () -> List.of(property("t.a", "Other"))));
        assertEquals(List.of("Alpha", "Zeta"), registries.properties().all().stream().map(PropertyDef::title).toList());
        assertEquals(1, registries.failures().size());
    }

    @Test
    void anEstimatorThatBreaksOffHasNothingToSayAndIsNamed() {
        PropertyEstimator broken = new PropertyEstimator() {
            @Override
            public Rank rank() {
                return Rank.MODEL;
            }

            @Override
            public Optional<Estimate> estimate(PropertyDef property, MaterialGrade grade) {
                throw new IllegalStateException("no table");
            }
        };
        Registries registries = new Registries(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(broken));
        assertEquals(List.of(), registries.failures());
        assertTrue(registries.estimates().estimate(property("t.a", "Force"), ModelFactory.eINSTANCE.createMaterialGrade(), null).isEmpty());
        assertEquals("It broke off while estimating Force: no table", registries.failures().get(0).why());
    }

    @Test
    void familiesOfABrokenEstimatorAreNoneAndItIsNamed() {
        PropertyEstimator broken = new PropertyEstimator() {
            @Override
            public Rank rank() {
                return Rank.FAMILY_RANGE;
            }

            @Override
            public Optional<Estimate> estimate(PropertyDef property, MaterialGrade grade) {
                return Optional.empty();
            }

            @Override
            public List<FamilyReach> families(TargetSheet sheet, PropertyCatalogue properties) {
                throw new IllegalStateException("no table");
            }
        };
        PropertyEstimator silent = (Estimator) () -> PropertyEstimator.Rank.MODEL;
        Registries registries = new Registries(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(broken, silent));
        assertEquals(List.of(), registries.estimates().families(ModelFactory.eINSTANCE.createTargetSheet(), registries.properties()));
        assertEquals(1, registries.failures().size());
        assertEquals("It broke off while estimating what families can reach: no table", registries.failures().get(0).why());
    }

    private interface Estimator extends PropertyEstimator {
        @Override
        default Optional<Estimate> estimate(PropertyDef property, MaterialGrade grade) {
            return Optional.empty();
        }
    }

    @Test
    void packagesOfDetailsComeOnceWithTheirOwner() {
        Registries registries = of(List.of(), List.of(new Kind("x.a", ModelPackage.Literals.READING), new Kind("x.b", ModelPackage.Literals.WEIGHING), new Kind("x.c", null)),
                List.of(), List.of());
        assertEquals(1, registries.packages().size());
        assertEquals(ModelPackage.eNS_URI, registries.packages().get(0).ePackage().getNsURI());
    }
}
