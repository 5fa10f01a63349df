package org.flexwright.core.trial;

import java.math.BigDecimal;
import java.util.List;

import org.flexwright.core.session.Edit;
import org.flexwright.model.Instrument;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Weighing;
import org.flexwright.quantity.QuantityFormat;

/** What the balance said. */
public final class Weighings {
    /** Half a hundredth of a gram: what may be lost in typing three rounded numbers. */
    private static final double TYPING = 0.005;

    private Weighings() {
    }

    /**
     * Adds a weighing. Any two of gross, tare and net give the third; net alone is enough. All in g, none negative.
     *
     * @param correction true when it mends the ratio
     * @param balance    the balance, or null
     */
    public static Weighing add(Edit edit, MaterialUse use, Double gross, Double tare, Double net, boolean correction, Instrument balance) {
        Weighing weighing = ModelFactory.eINSTANCE.createWeighing();
        double found = net(gross, tare, net);
        weighing.setNet(found);
        weighing.setTare(tare != null ? tare : gross != null ? Double.valueOf(gross - found) : null);
        weighing.setGross(gross != null ? gross : tare != null ? Double.valueOf(tare + found) : null);
        weighing.setAt(edit.now());
        weighing.setCorrection(correction);
        weighing.setInstrument(balance);
        edit.add(use, ModelPackage.Literals.MATERIAL_USE__WEIGHINGS, weighing);
        return weighing;
    }

    /** Net mass in g from any two of three. Throws PlanException when there is nothing, something negative or a contradiction. */
    public static double net(Double gross, Double tare, Double net) {
        notNegative("Gross", gross);
        notNegative("Tare", tare);
        notNegative("Net", net);
        if (gross != null && tare != null) {
            double difference = BigDecimal.valueOf(gross).subtract(BigDecimal.valueOf(tare)).doubleValue(); // as a person takes them off: no 24.880000000000003
            notNegative("Gross less tare", difference);
            if (net != null && Math.abs(difference - net) > TYPING) {
                throw PlanException.of("weigh.contradiction", g(gross), g(tare), g(difference), g(net));
            }
            return net == null ? difference : net;
        }
        if (net == null) {
            throw PlanException.of("weigh.nothing");
        }
        if (gross != null && net > gross) {
            throw PlanException.of("weigh.net", g(net), g(gross));
        }
        return net;
    }

    private static void notNegative(String what, Double mass) {
        if (mass != null && mass < 0) {
            throw PlanException.of("weigh.negative", what, g(mass));
        }
    }

    private static String g(double mass) {
        return QuantityFormat.plain(mass);
    }

    /** Sum of the net masses in g; null when nothing was weighed. */
    public static Double actual(MaterialUse use) {
        List<Double> nets = use.getWeighings().stream().map(Weighing::getNet).filter(java.util.Objects::nonNull).toList();
        return nets.isEmpty() ? null : Double.valueOf(nets.stream().mapToDouble(Double::doubleValue).sum());
    }
}
