package org.flexwright.core.recording;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EClass;
import org.flexwright.core.Source;
import org.flexwright.core.Watch;
import org.flexwright.model.ChannelRole;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Recording;
import org.flexwright.quantity.QuantityKind;

/** A small kind for tests: travel and force, time when there is one; its mark is the highest force. */
class PressLike implements RecordingKind {
    static final String FORCE = "test.force";

    @Override
    public String id() {
        return "test.press";
    }

    @Override
    public String title() {
        return "Press";
    }

    @Override
    public String summary() {
        return "A part pressed in.";
    }

    /** Any class of the model with described attributes will do. */
    @Override
    public EClass details() {
        return ModelPackage.Literals.PROPERTY_KEY;
    }

    @Override
    public RecordingFormat format() {
        return RecordingFormat.TABLE;
    }

    @Override
    public List<ChannelWish> channels() {
        return List.of(new ChannelWish(ChannelRole.TRAVEL, "travel", QuantityKind.LENGTH, "mm", true), new ChannelWish(ChannelRole.FORCE, "force", QuantityKind.FORCE, "N",
                true), new ChannelWish(ChannelRole.TIME, "time", QuantityKind.DURATION, "s", false));
    }

    @Override
    public Look look(Recording recording, RecordingData data, Watch watch) {
        double[] x = data.find(ChannelRole.TRAVEL).orElseThrow().values();
        double[] y = data.find(ChannelRole.FORCE).orElseThrow().values();
        int peak = 0;
        for (int i = 0; i < y.length; i++) {
            watch.check();
            peak = y[i] > y[peak] ? i : peak;
        }
        FoundMark mark = FoundMark.movable(recording, "peak", "peak", x[peak]);
        List<RecordingResult> results = new ArrayList<>();
        results.add(new RecordingResult("peak", "Peak force", FORCE, y[peak] * 1000, 5.0, "mN", Source.commonPractice()));
        results.add(new RecordingResult("where", "Travel there", null, mark.position(), null, "mm", Source.commonPractice()));
        return new Look(List.of(new CurvePlot("curve", "Force over travel", true, "Travel", "mm", "Force", "N", List.of(new CurvePlot.Curve("curve", x, y)))), List.of(mark),
                results, List.of());
    }
}
