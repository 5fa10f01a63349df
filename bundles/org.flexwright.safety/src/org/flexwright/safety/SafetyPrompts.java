package org.flexwright.safety;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.flexwright.core.Source;
import org.flexwright.core.process.HazardPrompt;
import org.flexwright.core.process.PromptSource;
import org.flexwright.model.MaterialGrade;
import org.flexwright.model.MaterialUse;
import org.flexwright.model.Step;
import org.flexwright.model.Trial;
import org.flexwright.safety.sheet.HazardStatements;
import org.flexwright.safety.sheet.MaterialHazard;
import org.osgi.service.component.annotations.Component;

/**
 * The usual cautions for the materials really in a step: read the data sheet; the statements the maker read on it; and what to look for
 * by family and role. They never classify a product. Prompts of the work itself (lamp, vacuum, pressure, heat) come from the step kinds.
 */
@Component(service = PromptSource.class)
public final class SafetyPrompts implements PromptSource {
    /** Id of the prompt under which reading a data sheet is ticked, once a session and lot. */
    public static final String SHEET = "safety.sheet";

    @Override
    public List<HazardPrompt> prompts(Step step, Trial trial) {
        List<MaterialUse> uses = SheetTicks.uses(step);
        if (uses.isEmpty()) {
            return List.of();
        }
        List<HazardPrompt> prompts = new ArrayList<>();
        prompts.add(new HazardPrompt(SHEET, Say.message("prompt.sheet", String.join(", ", names(uses))), Say.message("prompt.sheet.controls"), Source.commonPractice(), true));
        byHazard(uses).forEach((hazard, names) -> prompts.add(prompt(hazard, names)));
        statements(uses).values().forEach(prompts::add);
        if (alcoholMeetsIsocyanate(uses)) {
            prompts.add(new HazardPrompt("safety.alcohol-isocyanate", Say.message("prompt.alcohol"), Say.message("prompt.alcohol.controls"),
                    Source.published("NIOSH Pocket Guide, DHHS (NIOSH) 2005-149: isocyanates and isopropanol are incompatible"), false));
        }
        return prompts;
    }

    private static HazardPrompt prompt(MaterialHazard hazard, Set<String> names) {
        String key = "prompt." + hazard.key();
        String look = hazard.statements().isEmpty() ? Say.message("prompt.often-unclassified").text()
                : Say.message("prompt.look-for", HazardStatements.list(hazard.statements())).text();
        return new HazardPrompt("safety." + hazard.key(), Say.message(key, String.join(", ", names), look), Say.message(key + ".controls"), hazard.source(), true);
    }

    /** Prompts by family and role, each with the names of the materials that call for it. */
    private static Map<MaterialHazard, Set<String>> byHazard(List<MaterialUse> uses) {
        Map<MaterialHazard, Set<String>> found = new EnumMap<>(MaterialHazard.class);
        uses.forEach(use -> MaterialHazard.of(use).forEach(hazard -> found.computeIfAbsent(hazard, h -> new TreeSet<>()).add(name(use.getGrade()))));
        return found;
    }

    /** One prompt a grade whose sheet's statements the maker entered. */
    private static Map<String, HazardPrompt> statements(List<MaterialUse> uses) {
        Map<String, HazardPrompt> prompts = new LinkedHashMap<>();
        for (MaterialUse use : uses) {
            MaterialGrade grade = use.getGrade();
            Set<String> codes = HazardStatements.codes(grade.getHazards());
            if (!codes.isEmpty()) {
                String id = "safety.statements." + grade.getId();
                prompts.put(id, new HazardPrompt(id, Say.message("prompt.statements", name(grade), HazardStatements.list(codes)), Say.message("prompt.statements.controls"),
                        HazardStatements.SOURCE, true));
            }
        }
        return prompts;
    }

    private static boolean alcoholMeetsIsocyanate(List<MaterialUse> uses) {
        Set<MaterialHazard> all = new LinkedHashSet<>();
        uses.forEach(use -> all.addAll(MaterialHazard.of(use)));
        return all.contains(MaterialHazard.ISOCYANATE) && all.contains(MaterialHazard.SOLVENT);
    }

    private static Set<String> names(List<MaterialUse> uses) {
        Set<String> names = new LinkedHashSet<>();
        uses.forEach(use -> names.add(name(use.getGrade())));
        return names;
    }

    static String name(MaterialGrade grade) {
        return grade.getCode() == null || grade.getCode().isBlank() ? String.valueOf(grade.getName()) : grade.getCode();
    }
}
