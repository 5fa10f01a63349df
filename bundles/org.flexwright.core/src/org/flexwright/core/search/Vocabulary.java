package org.flexwright.core.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.flexwright.core.Message;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.field.FieldType;
import org.flexwright.core.process.StepKind;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.property.ResultWord;
import org.flexwright.core.registry.Registries;
import org.flexwright.core.search.Term.Amount;
import org.flexwright.core.search.Term.Range;
import org.flexwright.core.search.Term.Result;
import org.flexwright.model.ModelPackage;
import org.flexwright.quantity.QuantityKind;

/** What the plugins and the model call their numbers and results. */
final class Vocabulary {
    private final List<Called> numbers = new ArrayList<>();
    private final Map<String, Result> results = new HashMap<>();
    private final List<PropertyDef> answers = new ArrayList<>();

    private record Called(List<String> words, QuantityKind kind) {
    }

    Vocabulary(Registries registries) {
        for (PropertyDef property : registries.properties().all()) {
            if (property.yesNo()) {
                answers.add(property);
            } else {
                numbers.add(new Called(Plain.words(property.title()), property.kind()));
            }
        }
        registries.stepKinds().stream().map(StepKind::details).filter(java.util.Objects::nonNull).forEach(this::fields);
        for (EClassifier type : ModelPackage.eINSTANCE.getEClassifiers()) {
            if (type instanceof EClass thing) {
                fields(thing);
            }
        }
        registries.resultWords().forEach(word -> {
            Result result = result(registries.findProperty(word.property()).orElseThrow(), word);
            word.words().forEach(w -> results.putIfAbsent(w, result));
        });
    }

    private void fields(EClass type) {
        for (FieldDescriptor field : FieldDescriptors.ofClass(type)) {
            if (field.type() == FieldType.QUANTITY || field.type() == FieldType.INTEGER) {
                numbers.add(new Called(Plain.words(field.label()), field.type() == FieldType.INTEGER ? QuantityKind.COUNT : field.kind()));
            }
        }
    }

    private static Result result(PropertyDef property, ResultWord word) {
        if (property.yesNo()) {
            return answer(property, word.yes());
        }
        boolean below = Double.isInfinite(word.low()) || word.low() < 0 && property.kind() == QuantityKind.COUNT;
        boolean above = word.high() == Double.MAX_VALUE || Double.isInfinite(word.high());
        String low = FieldText.number(Double.isInfinite(word.low()) ? 0 : word.low(), property.kind(), "");
        String high = FieldText.number(above ? 0 : word.high(), property.kind(), "");
        String said = below && above ? say("result.any", property.title()) : above ? say("result.above", property.title(), low)
                : below ? say("result.upTo", property.title(), high) : say("result.between", property.title(), low, high);
        return new Result(said, property.id(), null, new Range(property.kind(), word.low(), word.high(), true, false));
    }

    private static Result answer(PropertyDef property, boolean yes) {
        return new Result(say(yes ? "result.yes" : "result.no", property.title()), property.id(), yes, null);
    }

    private static String say(String key, Object... args) {
        return Message.of(Vocabulary.class, key, args).text();
    }

    /** The result a word stands for; null when it is none. */
    Result result(String plain) {
        return results.get(plain);
    }

    /** The opposite of a yes or no; null for a number. */
    Result opposite(Result result) {
        return result.yes() == null ? null : answers.stream().filter(p -> p.id().equals(result.property())).findFirst().map(p -> answer(p, !result.yes())).orElse(null);
    }

    /** A yes/no property called by all words of its title, with yes, no, never or always behind it. */
    Parsed title(Tokens words, int i) {
        for (PropertyDef property : answers) {
            List<String> title = Plain.words(property.title());
            boolean all = true;
            for (int k = 0; k < title.size() && all; k++) {
                all = Plain.word(words.raw(i + k)).equals(title.get(k));
            }
            if (all) {
                String behind = words.small(i + title.size());
                boolean no = behind.equals("no") || behind.equals("never");
                boolean said = no || behind.equals("yes") || behind.equals("always");
                return new Parsed(answer(property, !no), i + title.size() + (said ? 1 : 0));
            }
        }
        return null;
    }

    /** True when a number is called by these two words side by side: then the first is no result. */
    boolean together(String one, String other) {
        return !other.isEmpty() && numbers.stream().anyMatch(c -> java.util.stream.IntStream.range(1, c.words.size()).anyMatch(i -> c.words.get(i - 1).equals(one) && c.words.get(
                i).equals(other)));
    }

    /** True when something that has such an amount is called by those words, each the beginning of one of its own. */
    boolean called(List<String> words, Amount amount) {
        return numbers.stream().anyMatch(c -> amount.ranges().stream().anyMatch(r -> r.kind() == null || r.kind() == c.kind) && words.stream().allMatch(w -> c.words.stream()
                .anyMatch(own -> own.startsWith(w))));
    }
}
