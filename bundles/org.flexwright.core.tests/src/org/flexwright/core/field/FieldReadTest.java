package org.flexwright.core.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Random;

import org.flexwright.core.Estimate;
import org.flexwright.core.Source;
import org.flexwright.core.calc.Field;
import org.flexwright.model.ModelPackage;
import org.flexwright.quantity.QuantityKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FieldReadTest {
    private static final FieldDescriptor MASS = FieldDescriptor.quantity("massA", "Mass of part A", QuantityKind.MASS, "g")
            .withBounds(0, Double.POSITIVE_INFINITY, true).withOptional(false);

    enum Cup {
        PLASTIC_CUP, GLASS
    }

    record Row(@Field(help = "from the start", kind = QuantityKind.DURATION, unit = "s") double time,
            @Field(help = "at the handle", kind = QuantityKind.FORCE, unit = "N", optional = true) Double force) {
    }

    record Inputs(@Field(help = "as weighed", kind = QuantityKind.MASS, unit = "g", min = 0, max = 500, minOpen = true) double massOfPart,
            @Field(help = "which", def = "glass") Cup cup, @Field(help = "how many", def = "3", min = 1) int count,
            @Field(help = "each", kind = QuantityKind.LENGTH, unit = "mm", optional = true) List<Double> walls,
            @Field(help = "as read", min = 2) List<Row> rows, @Field(help = "or not", def = "no") boolean warm) {
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"22.9 | 22.9 | 22.9 g", "22,9 | 22.9 | 22.9 g", "1 oz | 28.349523125 | 28.349523125 g", "0.5 kg | 500 | 500 g"})
    void numbersAreReadWithTheirUnitAndReadBack(String typed, double value, String understood) {
        FieldInput.Read read = assertInstanceOf(FieldInput.Read.class, MASS.read(typed));
        assertEquals(value, (Double) read.value(), 1e-12 * value);
        assertEquals(understood, read.understood());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"-3 g | Mass of part A must be above 0 g; got -3 g.", "0 | Mass of part A must be above 0 g; got 0 g.",
            "-0.003 kg | Mass of part A must be above 0 g; got -3 g.", "'' | Mass of part A must be entered."})
    void oneSentenceSaysWhatIsAllowed(String typed, String sentence) {
        assertEquals(sentence, sentence(MASS, typed));
    }

    @Test
    void aWrongUnitIsNamedWithItsField() {
        String sentence = sentence(MASS, "3 mm");
        assertTrue(sentence.startsWith("Mass of part A: ") && sentence.contains("mm"), sentence);
    }

    @Test
    void bothBoundsStandInOneSentence() {
        FieldDescriptor field = FieldDescriptors.ofRecord(Inputs.class).get(0);
        assertEquals("Mass of part must be above 0 g and at most 500 g; got 600 g.", sentence(field, "600"));
        assertEquals("Wall must be from 1 mm to 2 mm; got 25.4 mm.",
                sentence(FieldDescriptor.quantity("wall", "Wall", QuantityKind.LENGTH, "mm").withBounds(1, 2, false), "1 in"));
    }

    @Test
    void emptyIsNotZero() {
        FieldDescriptor optional = MASS.withOptional(true).withBounds(0, 10, false);
        assertNull(value(optional, "  "));
        assertEquals(0.0, value(optional, "0"));
    }

    @Test
    void choicesComeByLiteralOrLabel() {
        FieldDescriptor cup = FieldDescriptors.ofRecord(Inputs.class).get(1);
        assertEquals(Cup.PLASTIC_CUP, value(cup, "plastic-cup"));
        assertEquals(Cup.PLASTIC_CUP, value(cup, "Plastic cup"));
        assertEquals("Cup must be one of plastic-cup, glass; got tin.", sentence(cup, "tin"));
    }

    @Test
    void wholeNumbersFlagsAndDays() {
        FieldDescriptor count = FieldDescriptors.ofRecord(Inputs.class).get(2);
        assertEquals(12, value(count, "12"));
        assertEquals("Count must be a whole number; got 2.5.", sentence(count, "2.5"));
        assertEquals("Count must be at least 1; got 0.", sentence(count, "0"));
        FieldDescriptor flag = FieldDescriptor.of("warm", "Warm", FieldType.FLAG);
        assertEquals(true, value(flag, "Yes"));
        assertEquals(false, value(flag, "no"));
        assertEquals("Warm must be yes or no; got maybe.", sentence(flag, "maybe"));
        FieldDescriptor day = FieldDescriptor.of("opened", "Opened", FieldType.DATE);
        assertEquals(LocalDate.of(2025, 3, 14), value(day, "2025-03-14"));
        assertEquals("Opened must be a day like 2025-03-14; got 2025-02-30.", sentence(day, "2025-02-30"));
        FieldDescriptor at = FieldDescriptor.of("at", "When", FieldType.INSTANT);
        assertEquals(Instant.parse("2025-03-14T09:30:00Z"), value(at, "2025-03-14 10:30+01:00"));
        assertEquals(Instant.parse("2025-03-14T09:30:00Z"), value(at, "2025-03-14T09:30:00Z"));
    }

    @Test
    void listsGoBySemicolonAndNameTheirValue() {
        FieldDescriptor walls = FieldDescriptors.ofRecord(Inputs.class).get(3);
        assertEquals(List.of(1.5, 2.54), value(walls, "1,5; 0.1 in"));
        assertEquals("1.5 mm; 2.54 mm", walls.print(List.of(1.5, 2.54)));
        assertTrue(sentence(walls, "1.5; x").startsWith("Walls, value 2: "), sentence(walls, "1.5; x"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '#', value = {"0; 1,5 N | 2 s; 3", "0,1.5\\n2,3", "Force [N]; Time [s]\\n1.5; 0\\n3; 2", "0\\t1.5\\n\\n2\\t3\\n"})
    void tablesComeAsRowsOrCsvWithOrWithoutHeader(String typed) {
        FieldDescriptor table = FieldDescriptors.ofRecord(Inputs.class).get(4);
        Object rows = value(table, typed.replace("\\n", "\n").replace("\\t", "\t"));
        assertEquals(List.of(Map.of("time", 0.0, "force", 1.5), Map.of("time", 2.0, "force", 3.0)), rows);
        assertEquals(rows, value(table, table.print(rows)));
    }

    @Test
    void tablesNameRowAndColumn() {
        FieldDescriptor table = FieldDescriptors.ofRecord(Inputs.class).get(4);
        assertEquals("Rows, row 2, Time must be entered.", sentence(table, "0;1|;2"));
        assertEquals("Rows, row 1: there are 2 columns but 3 cells.", sentence(table, "0;1;2|1;2"));
        assertEquals("Rows: the number of entries must be at least 2; got 1.", sentence(table, "0;1"));
        assertEquals("Rows: a quotation mark is not closed.", sentence(table, "0;\"1|2;3"));
    }

    @Test
    void whatIsPrintedIsReadAgain() {
        Random random = new Random(4);
        FieldDescriptor free = FieldDescriptor.quantity("x", "X", QuantityKind.TEMPERATURE, "degF");
        for (int i = 0; i < 500; i++) {
            double value = Math.scalb(random.nextDouble(), random.nextInt(14));
            // Twelve digits are kept in print.
            assertEquals(value, (Double) value(free, free.print(value)), 1e-11 * value);
        }
    }

    @Test
    void featuresOfTheModelAreDescribedByTheirAnnotations() {
        FieldDescriptor room = FieldDescriptors.of(ModelPackage.Literals.SESSION__ROOM_C);
        assertEquals("Room temperature", room.label());
        assertEquals(QuantityKind.TEMPERATURE, room.kind());
        assertEquals("Room temperature must be from -20 °C to 60 °C; got 100 °C.", sentence(room, "212 F"));
        List<String> names = FieldDescriptors.ofClass(ModelPackage.Literals.SESSION).stream().map(FieldDescriptor::name).toList();
        assertEquals(List.of("code", "at", "roomC", "roomRh", "who", "conditioningHours", "room"), names);
        assertEquals(FieldType.LIST, FieldDescriptors.of(ModelPackage.Literals.MATERIAL_GRADE__HAZARDS).type());
        assertEquals(QuantityKind.DURATION, FieldDescriptors.of(ModelPackage.Literals.TRIAL__HOURS).kind());
    }

    @Test
    void everyLabelledFeatureOfTheModelMakesAField() {
        for (var type : ModelPackage.eINSTANCE.getEClassifiers()) {
            if (type instanceof org.eclipse.emf.ecore.EClass c) {
                FieldDescriptors.ofClass(c).forEach(f -> assertTrue(!f.label().isBlank(), c.getName() + "." + f.name()));
            }
        }
    }

    record NoHelp(double a) {
    }

    record Primitive(@Field(help = "x", optional = true) double a) {
    }

    record WrongUnit(@Field(help = "x", kind = QuantityKind.MASS, unit = "mm") double a) {
    }

    @Test
    void recordsThatCannotBeFieldsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> FieldDescriptors.ofRecord(NoHelp.class));
        assertThrows(IllegalArgumentException.class, () -> FieldDescriptors.ofRecord(Primitive.class));
        assertThrows(IllegalArgumentException.class, () -> FieldDescriptors.ofRecord(WrongUnit.class));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"59 | 61 | 63 | 61 ± 2 Shore A", "60.8 | 60.9333 | 61.0666 | 60.93 ± 0.13 Shore A", "50 | 52 | 61 | 52 (50 … 61) Shore A",
            "60.9333 | 60.9333 | 60.9333 | 60.93 Shore A",
            "28.36 | 80 | 99.49 | 80 (28 … 99) Shore A", "20312 | 41667 | 112345 | 42000 (20000 … 112000) Shore A"})
    void bandsAreRoundedToWhatIsKnown(double low, double likely, double high, String shown) {
        FieldDescriptor hardness = FieldDescriptor.quantity("h", "Hardness", QuantityKind.SHORE_A, "Shore A");
        assertEquals(shown, FieldText.show(hardness, new Estimate(low, likely, high, Source.commonPractice())));
    }

    private static Object value(FieldDescriptor field, String typed) {
        return assertInstanceOf(FieldInput.Read.class, field.read(typed), () -> field.read(typed).toString()).value();
    }

    private static String sentence(FieldDescriptor field, String typed) {
        return assertInstanceOf(FieldInput.Rejected.class, field.read(typed)).sentence();
    }
}
