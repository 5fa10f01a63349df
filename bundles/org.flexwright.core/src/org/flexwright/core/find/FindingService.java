package org.flexwright.core.find;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

import org.flexwright.core.Message;
import org.flexwright.core.Source;
import org.flexwright.core.process.StepKinds;
import org.flexwright.core.property.PropertyCatalogue;
import org.flexwright.core.session.Edit;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.Project;
import org.flexwright.model.StopOverride;
import org.flexwright.model.Trial;

/** Asks every rule and gathers what they find. Nothing is stored; a stop may be overridden with a reason, as long as its values stay. */
public final class FindingService {
    /** Rule id of the finding that reports a rule which broke off. */
    public static final String BROKEN_RULE = "core.broken-rule";

    private final List<FindingRule> rules;
    private final PropertyCatalogue properties;
    private final StepKinds kinds;

    /** A service asking these rules, which may ask these step kinds. */
    public FindingService(List<FindingRule> rules, PropertyCatalogue properties, StepKinds kinds) {
        this.rules = List.copyOf(rules);
        this.properties = properties;
        this.kinds = kinds;
    }

    /** A service asking rules that ask no step kind. */
    public FindingService(List<FindingRule> rules, PropertyCatalogue properties) {
        this(rules, properties, StepKinds.NONE);
    }

    /** All findings, stops first, then cautions, then notes; within these by rule order. Never throws for a failing rule. */
    public List<Finding> check(Project project, Instant now) {
        List<Finding> found = new ArrayList<>();
        for (FindingRule rule : rules) {
            found.addAll(ask(rule, project, null, now));
        }
        return sorted(found);
    }

    /** Findings of trial rules about one trial only. */
    public List<Finding> check(Project project, Trial trial, Instant now) {
        List<Finding> found = new ArrayList<>();
        for (FindingRule rule : rules) {
            found.addAll(ask(rule, project, trial, now));
        }
        return sorted(found);
    }

    private static List<Finding> sorted(List<Finding> found) {
        found.sort(Comparator.comparing(Finding::severity).reversed());
        return List.copyOf(found);
    }

    /** What was found before a rule broke off is kept. */
    private List<Finding> ask(FindingRule rule, Project project, Trial only, Instant now) {
        List<Finding> found = new ArrayList<>();
        try {
            if (rule.scope() == FindingRule.Scope.PROJECT) {
                if (only == null) {
                    rule.check(new RuleContext(project, null, properties, kinds, now), found::add);
                }
            } else {
                for (Trial trial : only == null ? List.copyOf(project.getTrials()) : List.of(only)) {
                    rule.check(new RuleContext(project, trial, properties, kinds, now), found::add);
                }
            }
        } catch (RuntimeException | LinkageError e) {
            found.add(broken(rule, project, e));
        }
        return found;
    }

    private static Finding broken(FindingRule rule, Project project, Throwable why) {
        String id;
        try {
            id = rule.id();
        } catch (RuntimeException | LinkageError e) {
            id = rule.getClass().getName();
        }
        String said = why.getMessage() == null ? why.getClass().getSimpleName() : why.getMessage();
        return new Finding(BROKEN_RULE, Severity.CAUTION, idOf(project), "", Message.of(FindingService.class, "broken", id, said), List.of(id, said),
                Source.derived(Message.of(FindingService.class, "broken.source").text()), Message.of(FindingService.class, "broken.remedy", id));
    }

    private static String idOf(Project project) {
        return project.getId() == null ? "" : project.getId();
    }

    /** The override in force for this finding: same rule and subject, and what it rests on unchanged. Empty when there is none or it lapsed. */
    public static Optional<StopOverride> overridden(Finding finding, Project project) {
        String hash = hash(finding);
        return project.getOverrides().stream().filter(o -> sameCase(o, finding) && hash.equals(o.getInputHash())).findFirst();
    }

    /** Overrides of the same rule and subject whose values have changed since: they no longer hold. */
    public static List<StopOverride> lapsed(Finding finding, Project project) {
        String hash = hash(finding);
        return project.getOverrides().stream().filter(o -> sameCase(o, finding) && !hash.equals(o.getInputHash())).toList();
    }

    /** Writes down that a finding is gone against, with its reason; it holds as long as the values the finding rests on stay. */
    public static StopOverride override(Edit edit, Finding finding, String reason, String who) {
        if (reason == null || reason.isBlank()) {
            throw new IllegalArgumentException("Going against a finding needs a reason in words.");
        }
        StopOverride override = ModelFactory.eINSTANCE.createStopOverride();
        override.setRule(finding.rule());
        override.setSubject(finding.subject());
        override.setInputHash(hash(finding));
        override.setReason(reason.strip());
        override.setWho(who);
        override.setAt(edit.now());
        edit.add(edit.project(), ModelPackage.Literals.PROJECT__OVERRIDES, override);
        return override;
    }

    private static boolean sameCase(StopOverride override, Finding finding) {
        return finding.rule().equals(override.getRule()) && finding.subject().equals(override.getSubject());
    }

    /** SHA-256 over rule, subject and the values it rests on, as hexadecimal text; each part is preceded by its length, so that none runs into the next. */
    public static String hash(Finding finding) {
        MessageDigest digest;
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java runtime has SHA-256.", e);
        }
        List<String> parts = new ArrayList<>(List.of(finding.rule(), finding.subject()));
        parts.addAll(finding.restsOn());
        for (String part : parts) {
            byte[] bytes = part.getBytes(StandardCharsets.UTF_8);
            digest.update((bytes.length + ":").getBytes(StandardCharsets.UTF_8));
            digest.update(bytes);
        }
        return HexFormat.of().formatHex(digest.digest());
    }
}
