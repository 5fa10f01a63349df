package org.flexwright.core.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;

import org.flexwright.core.Estimate;
import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.quantity.QuantityKind;
import org.junit.jupiter.api.Test;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;

class CalculationRunnerTest {
    record Layer(@Field(help = "each", kind = QuantityKind.LENGTH, unit = "mm", min = 0) double height) {
    }

    record In(@Field(help = "what is in the cup", kind = QuantityKind.MASS, unit = "g", min = 0, minOpen = true) double mass,
            @Field(help = "of the mix", kind = QuantityKind.DENSITY, unit = "g/cm3", def = "1.05", min = 0, minOpen = true) double density,
            @Field(help = "how much is left behind", kind = QuantityKind.FRACTION, unit = "%", optional = true) Double waste,
            @Field(help = "layers", optional = true) List<Layer> layers) {
    }

    record Out(@Field(help = "<volume> & more", kind = QuantityKind.VOLUME, unit = "cm3") Estimate volume,
            @Field(help = "in all", kind = QuantityKind.LENGTH, unit = "mm") double height, @Field(help = "in words") String words,
            @Field(help = "again") List<Layer> layers) {
    }

    /** Volume of what is weighed; refuses more waste than there is, breaks off for one mass and gives no number for another. */
    static final class Volume implements Calculation<In, Out> {
        @Override
        public CalculationInfo info() {
            return new CalculationInfo("test.volume", "Volume in the cup", 2, "V = m / rho.", Source.derived("definition of density"), "Any liquid.");
        }

        @Override
        public Class<In> inputType() {
            return In.class;
        }

        @Override
        public Class<Out> resultType() {
            return Out.class;
        }

        @Override
        public Outcome<Out> run(In in) {
            if (in.mass() == 13) {
                throw new IllegalStateException("thirteen");
            }
            double waste = in.waste() == null ? 0 : in.waste();
            if (waste >= 100) {
                return Outcome.refused("waste", Message.of(CalculationRunner.class, "broke", "Waste", "nothing is left"),
                        Message.of(CalculationRunner.class, "remedyEnter", "waste"));
            }
            double volume = in.mass() == 17 ? Double.POSITIVE_INFINITY : in.mass() / in.density() * (1 - waste / 100);
            double height = in.layers().stream().mapToDouble(Layer::height).sum();
            return Outcome.done(new Out(new Estimate(volume * 0.9, volume, volume * 1.1, Source.commonPractice("cups")), height, "fine", in.layers()));
        }
    }

    private static CalculationResult run(Map<String, String> typed) {
        return CalculationRunner.run(new Volume(), typed);
    }

    @Test
    void typedTextBecomesResultsWithBandUnitAndSource() {
        CalculationResult result = run(Map.of("mass", "0,021 kg", "layers", "1|2.5"));
        assertTrue(result.done());
        ResultValue volume = result.results().get("volume");
        assertEquals(20, volume.likely(), 1e-12);
        assertEquals(18, volume.low(), 1e-12);
        assertEquals("20 ± 2 cm³", volume.text());
        assertEquals("cups (common practice, no source)", volume.source().display());
        assertEquals(3.5, result.results().get("height").likely());
        assertEquals("definition of density", result.results().get("height").source().display());
        assertTrue(result.inputs().get("density").byDefault());
        assertEquals("21 g", result.inputs().get("mass").understood());
        assertNull(result.inputs().get("waste").value());
    }

    @Test
    void everyInputThatIsNotAcceptedIsNamed() {
        CalculationResult result = run(Map.of("mass", "-3 g", "density", "x", "colour", "red"));
        assertFalse(result.done());
        assertEquals("mass", result.refused().input());
        assertEquals("Mass must be above 0 g; got -3 g.", result.refused().why());
        assertEquals("Enter Mass above 0 g.", result.refused().remedy());
        assertEquals(List.of("mass", "density", "colour"), List.copyOf(result.problems().keySet()));
        assertEquals("test.volume has no input colour; it has mass, density, waste, layers.", result.problems().get("colour"));
        assertTrue(result.results().isEmpty());
    }

    @Test
    void aMissingInputWithoutDefaultIsRefused() {
        assertEquals("Mass must be entered.", run(Map.of()).refused().why());
    }

    @Test
    void refusalsDefectsAndNumbersThatAreNoneComeAsRefusals() {
        assertEquals("waste", run(Map.of("mass", "5", "waste", "100")).refused().input());
        assertEquals("Volume in the cup broke off: thirteen", run(Map.of("mass", "13")).refused().why());
        assertEquals("Volume in the cup gave no number for Volume.", run(Map.of("mass", "17")).refused().why());
    }

    @Test
    void jsonKeepsItsShape() {
        JsonObject done = JsonParser.parseString(CalculationJson.toJson(run(Map.of("mass", "21", "layers", "1")))).getAsJsonObject();
        assertEquals(List.of("id", "version", "inputs", "results", "findings", "refused"), List.copyOf(done.keySet()));
        JsonObject volume = done.getAsJsonObject("results").getAsJsonObject("volume");
        assertEquals(20, volume.get("likely").getAsDouble(), 1e-12);
        assertEquals("cm3", volume.get("unit").getAsString());
        assertTrue(done.get("refused").isJsonNull());
        assertEquals(1, done.getAsJsonObject("results").getAsJsonObject("layers").getAsJsonArray("value").get(0).getAsJsonObject().get("height").getAsDouble());
        JsonObject refused = JsonParser.parseString(CalculationJson.toJson(run(Map.of()))).getAsJsonObject().getAsJsonObject("refused");
        assertEquals("mass", refused.get("input").getAsString());
    }

    @Test
    void theListDescribesEveryField() {
        JsonObject described = JsonParser.parseString(CalculationJson.list(List.of(new Volume()))).getAsJsonArray().get(0).getAsJsonObject();
        JsonObject density = described.getAsJsonArray("inputs").get(1).getAsJsonObject();
        assertEquals("1.05", density.get("default").getAsString());
        assertEquals("above 0 g/cm³", density.get("allowed").getAsString());
        assertEquals(4, described.getAsJsonArray("results").size());
    }

    @Test
    void theManualPageComesFromTheDescription() {
        String page = Manual.page(new Volume());
        assertTrue(page.contains("<td>1.05</td>") && page.contains("<td>above 0 g</td>") && page.contains("must be entered"), page);
        assertTrue(page.contains("&lt;volume&gt; &amp; more") && page.contains("Any liquid."), page);
        assertTrue(page.contains("Layers: Height"), page);
    }
}
