package org.flexwright.core.registry;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.PropertyEstimator;
import org.flexwright.model.MaterialGrade;

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
            String said = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
            failure.compareAndSet(null, new Failure(estimator.getClass().getName(), Message.of(GuardedEstimator.class, "brokeOff", property.title(), said).text(),
                    Owner.of(estimator.getClass()).plugin()));
            return Optional.empty();
        }
    }

    Optional<Failure> failure() {
        return Optional.ofNullable(failure.get());
    }
}
