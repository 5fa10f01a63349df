package org.flexwright.cli;

import java.util.LinkedHashMap;
import java.util.Map;

import org.flexwright.core.Estimate;
import org.flexwright.core.field.FieldText;

/**
 * One result as printed: a number with its band, or words.
 *
 * @param low    lower end, null for words
 * @param likely likely value, null for words
 * @param high   upper end, null for words
 * @param unit   unit symbol, empty for words and pure numbers
 * @param source what it rests on
 * @param text   the words, null for numbers
 */
record Value(Double low, Double likely, Double high, String unit, String source, String text) {

    static Value number(double value, String unit, String source) {
        return new Value(value, value, value, unit, source, null);
    }

    static Value band(Estimate band, String unit) {
        return new Value(band.low(), band.likely(), band.high(), unit, band.source().display(), null);
    }

    static Value words(String text, String source) {
        return new Value(null, null, null, "", source, text);
    }

    /** The value for people, rounded to its band. */
    String display() {
        if (text != null) {
            return text;
        }
        String tail = unit.isEmpty() || unit.equals("1") ? "" : " " + unit;
        if (low.equals(high)) {
            return FieldText.digits(likely) + tail;
        }
        double half = (high - low) / 2;
        return FieldText.rounded(likely, half) + tail + " (" + FieldText.rounded(low, half) + " to " + FieldText.rounded(high, half) + tail + ")";
    }

    Map<String, Object> json() {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("low", low);
        map.put("likely", likely);
        map.put("high", high);
        map.put("unit", unit);
        map.put("source", source);
        if (text != null) {
            map.put("text", text);
        }
        return map;
    }
}
