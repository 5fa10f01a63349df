package org.flexwright.core.registry;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.core.property.FamilyReach;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertyEstimator;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.TargetSheet;

/** An estimator that has nothing to say when it breaks; its first failure is kept to be named. */
final class GuardedEstimator implements PropertyEstimator {
    private final PropertyEstimator estimator;
    private final Rank rank;
    private final AtomicReference<Failure> failure = new AtomicReference<>();

    GuardedEstimator(PropertyEstimator estimator, Rank rank) {
        this.estimator = estimator;
        this.rank = rank;
    }

    @Override
    public Rank rank() {
        return rank;
    }

    @Override
    public Optional<Estimate> estimate(PropertyDef property, MaterialGrade grade) {
        try {
            return estimator.estimate(property, grade);
        } catch (RuntimeException | LinkageError e) {
            keep(property.title(), e);
            return Optional.empty();
        }
    }

    @Override
    public List<FamilyReach> families(TargetSheet sheet, PropertyCatalogue properties) {
        try {
            return List.copyOf(estimator.families(sheet, properties));
        } catch (RuntimeException | LinkageError e) {
            keep(Message.of(GuardedEstimator.class, "families").text(), e);
            return List.of();
        }
    }

    private void keep(String about, Throwable problem) {
        String said = problem.getMessage() == null ? problem.getClass().getSimpleName() : problem.getMessage();
        failure.compareAndSet(null, new Failure(estimator.getClass().getName(), Message.of(GuardedEstimator.class, "brokeOff", about, said).text(),
                Owner.of(estimator.getClass()).plugin()));
    }

    Optional<Failure> failure() {
        return Optional.ofNullable(failure.get());
    }
}
