package org.flexwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.flexwright.core.naming.Find;
import org.flexwright.core.search.Answer;
import org.flexwright.core.search.Hit;
import org.flexwright.core.search.ProjectSearch;
import org.flexwright.core.search.SavedSearches;
import org.flexwright.core.search.ThingKind;
import org.flexwright.core.search.Why;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.session.ProjectStore;
import org.flexwright.core.session.StoreException;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Search over everything in a project, or in all projects of a folder. */
@Command(name = "find", description = "Search over everything: results, numbers with their unit, notes, lots, times. All words must be met.", mixinStandardHelpOptions = true,
        footer = { "", "A word may be the beginning of a longer one; \"words in quotes\" stand exactly so; what follows not must not be there.",
                "Numbers: 46 A (what rounds to it), 40-44 A, \"> 12 N\", wall 1.4-1.5 mm. Times: last year, March 2026, before 2026-03-14.",
                "Kinds of things: trials, lots, recipes. Texts of one kind: notes, conclusions, note:bubbles.", "",
                "Example: flexwright find snapped 40-44 A last year" })
final class FindCall extends Call {
    private static final int MOST = 40;

    @Parameters(arity = "0..*", paramLabel = "WORDS", description = "What is looked for.")
    List<String> words = List.of();
    @Option(names = "--project", paramLabel = "FOLDER", description = "The project's folder; else the only one in the current folder.")
    Path project;
    @Option(names = "--in", paramLabel = "FOLDER", description = "Search all projects in this folder and the folders in it; none is changed.")
    Path in;
    @Option(names = "--save", paramLabel = "NAME", description = "Keep the search in the project under this name.")
    String save;
    @Option(names = "--saved", paramLabel = "NAME", description = "Make a saved search again.")
    String saved;
    @Option(names = "--most", paramLabel = "COUNT", description = "Most hits shown of a project; ${DEFAULT-VALUE} when left out.")
    int most = MOST;

    @Override
    protected Reply reply(CliServices services) {
        if (saved == null == words.isEmpty()) {
            throw new UsageException(saved == null ? "Say what is looked for, e.g. flexwright find snapped 40-44 A last year." : "Give words or --saved, not both.");
        }
        if (in != null && (project != null || save != null || saved != null)) {
            throw new UsageException("--in searches many projects: it goes with neither --project, --save nor --saved.");
        }
        if (most < 1) {
            throw new UsageException("--most is 1 or more; got " + most + ".");
        }
        Reply reply = new Reply("find").input("words", String.join(" ", words));
        if (in != null) {
            many(services, reply);
        } else {
            one(services, ProjectCall.folder(services, project), reply);
        }
        return reply;
    }

    private void one(CliServices services, Path folder, Reply reply) {
        ProjectStore store = services.store();
        try (ProjectSession session = save == null ? store.openReadOnly(folder) : store.open(folder)) {
            if (save != null && session.readOnly()) {
                throw new CliException(session.readOnlyReason(), null);
            }
            String asked = saved == null ? String.join(" ", words) : Find.search(session.project(), saved).getQuery();
            Answer answer = search(services, session, asked);
            understood(answer, reply);
            hits(answer, null, reply);
            session.notices().forEach(notice -> reply.notice(notice.text()));
            if (save != null) {
                session.execute("Save the search " + save, edit -> SavedSearches.save(edit, save, asked));
                session.save();
                reply.words("saved", save.strip());
            }
        }
    }

    private Answer search(CliServices services, ProjectSession session, String asked) {
        try (ProjectSearch search = new ProjectSearch(session, services.registries(), services.clock())) {
            return search.readAll().find(asked, most);
        }
    }

    private void many(CliServices services, Reply reply) {
        Path root = services.workingFolder().resolve(in);
        List<Path> folders = projects(root);
        if (folders.isEmpty()) {
            throw new UsageException("There is no project in " + in + ".");
        }
        boolean first = true;
        int total = 0;
        for (Path folder : folders) {
            String called = called(root, folder);
            try (ProjectSession session = services.store().openReadOnly(folder)) {
                Answer answer = search(services, session, String.join(" ", words));
                if (first) {
                    reply.words("understood", answer.said());
                    reply.line("Looked for: " + answer.said());
                    first = false;
                }
                answer.left().forEach(left -> reply.notice(called(root, folder) + ": " + left));
                total += answer.total();
                if (answer.total() > 0) {
                    reply.line(called + ": " + session.project().getTitle());
                    hits(answer, called, reply);
                }
            } catch (StoreException e) {
                reply.notice(called + ": " + e.getMessage());
            }
        }
        reply.result("found", Value.number(total, "1", Reply.OWN_RECORD)).result("projects", Value.number(folders.size(), "1", Reply.OWN_RECORD));
        if (total == 0) {
            reply.line("Nothing has all of that in " + Words.count(folders.size(), "project") + ".");
        }
    }

    private static String called(Path root, Path folder) {
        String called = root.relativize(folder).toString();
        return called.isEmpty() ? folder.getFileName().toString() : called;
    }

    /** Projects below a folder, two folders deep. */
    private static List<Path> projects(Path root) {
        try (Stream<Path> all = Files.find(root, 2, (path, attributes) -> attributes.isDirectory() && path.getFileName() != null && path.getFileName().toString().endsWith(
                ProjectStore.SUFFIX))) {
            return all.sorted().toList();
        } catch (IOException | java.io.UncheckedIOException e) {
            throw new CliException("The folder " + root.getFileName() + " cannot be read.", e);
        }
    }

    private static void understood(Answer answer, Reply reply) {
        reply.words("understood", answer.said());
        reply.result("found", Value.number(answer.total(), "1", Reply.OWN_RECORD));
        reply.line(answer.understood().isEmpty() ? "Nothing was understood." : "Looked for: " + answer.said());
        answer.left().forEach(reply::notice);
        if (answer.total() == 0) {
            reply.line("Nothing has all of that.");
        }
    }

    private void hits(Answer answer, String folder, Reply reply) {
        ThingKind kind = null;
        for (Hit hit : answer.hits()) {
            if (hit.kind() != kind) {
                kind = hit.kind();
                reply.line(kind.title() + "  " + answer.counts().get(kind));
            }
            reply.line("  " + hit.name() + (hit.day() == null ? "" : "  " + hit.dayWord() + " " + hit.day()) + Words.tail("  ", hit.line()));
            hit.why().forEach(why -> reply.line("      " + why.line()));
            reply.item(row(hit, folder));
        }
        int cautions = answer.hits().stream().anyMatch(h -> h.kind() == ThingKind.CAUTION) ? 0 : answer.counts().getOrDefault(ThingKind.CAUTION, 0);
        int more = answer.total() - answer.hits().size() - cautions;
        if (more > 0) {
            reply.line(more + " more; --most " + (answer.hits().size() + more) + " shows all.");
        }
        if (cautions > 0) {
            reply.line(Words.count(cautions, "caution") + " read; the word cautions shows them.");
        }
    }

    private static Map<String, Object> row(Hit hit, String folder) {
        Map<String, Object> row = new LinkedHashMap<>();
        if (folder != null) {
            row.put("project", folder);
        }
        row.put("kind", hit.kind().name().toLowerCase(java.util.Locale.ROOT));
        row.put("id", hit.address());
        row.put("code", hit.code());
        row.put("name", hit.name());
        row.put("line", hit.line());
        row.put("day", hit.day() == null ? null : hit.day().toString());
        row.put("opens", hit.opens());
        List<Map<String, String>> why = new ArrayList<>();
        for (Why one : hit.why()) {
            Map<String, String> words = new LinkedHashMap<>();
            words.put("label", one.label());
            words.put("text", one.text());
            words.put("place", one.placeName());
            why.add(words);
        }
        row.put("why", why);
        return row;
    }
}
