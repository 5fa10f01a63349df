package org.flexwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

import org.flexwright.core.Message;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.naming.Find;
import org.flexwright.core.property.PropertyDef;
import org.flexwright.core.session.ProjectSession;
import org.flexwright.core.trial.Attachments;
import org.flexwright.core.trial.SpotMaps;
import org.flexwright.core.view.SpotSketch;
import org.flexwright.core.view.SpotView;
import org.flexwright.model.Attachment;
import org.flexwright.model.AttachmentKind;
import org.flexwright.model.ModelFactory;
import org.flexwright.model.SpotMap;
import org.flexwright.model.SpotPlace;
import org.flexwright.report.SpotFile;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Spot maps. */
@Command(name = "map", description = "Maps of a part: where it is read, and what was read there, on a photo or sketch.", mixinStandardHelpOptions = true,
        footer = { "", "Example: flexwright map add --title \"hard spots\" --sketch dome-top" },
        subcommands = { MapNoun.Add.class, MapNoun.Spot.class, MapNoun.Show.class })
final class MapNoun extends Noun {

    @Command(name = "add", description = "Add a map on a sketch or on a photo.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright map add --title \"hard spots\" --photo dome.png" })
    static final class Add extends ProjectCall {
        @Option(names = "--title", description = "What it is called; a free name when left out.")
        String title;
        @Option(names = "--sketch", description = "dome-top, dome-side or sheet.")
        String sketch;
        @Option(names = "--photo", paramLabel = "FILE", description = "A photo to lay under the spots; it is copied into the project.")
        Path photo;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            SpotMap[] made = new SpotMap[1];
            session.execute("Add a spot map", edit -> made[0] = SpotMaps.add(edit, title, sketch));
            if (photo != null) {
                Attachment picture = Attachments.copyIn(session, services.workingFolder().resolve(photo), AttachmentKind.PHOTO, made[0].getTitle(), null);
                session.execute("Lay a photo under " + made[0].getTitle(), edit -> SpotMaps.picture(edit, made[0], picture));
            }
            return new Reply(id()).words("map", made[0].getTitle()).words("on", photo == null ? SpotSketch.orSheet(made[0].getSketch()).title() : "photo " + photo.getFileName());
        }
    }

    /** A verb about one map. */
    abstract static class OneMap extends ProjectCall {
        @Parameters(paramLabel = "MAP", description = "Title of the map.")
        String title;

        protected final SpotMap map(ProjectSession session) {
            return Find.one("spot map", session.project().getSpotMaps(), SpotMap::getTitle, title);
        }
    }

    @Command(name = "spot", description = "Put a spot on the map, move it, rename it or take it away.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright map spot \"hard spots\" crown --across 0.5 --down 0.5" })
    static final class Spot extends OneMap {
        @Parameters(index = "1", paramLabel = "SPOT", description = "Its name, as the readings name it.")
        String spot;
        @Option(names = "--across", description = "Share of the width from the left, 0 to 1.")
        String across;
        @Option(names = "--down", description = "Share of the height from the top, 0 to 1.")
        String down;
        @Option(names = "--rename", paramLabel = "NAME", description = "Another name for the spot that is there.")
        String rename;
        @Option(names = "--remove", description = "Take it off the map; its readings stay.")
        boolean remove;

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            SpotMap map = map(session);
            Reply reply = new Reply(id()).words("map", map.getTitle());
            if (remove || rename != null) {
                SpotPlace place = Find.one("spot", map.getPlaces(), SpotPlace::getSpot, spot);
                session.execute(remove ? "Take " + spot + " off the map" : "Rename " + spot, edit -> {
                    if (remove) {
                        SpotMaps.remove(edit, place);
                    } else {
                        SpotMaps.rename(edit, place, rename);
                    }
                });
                return reply.words("spot", remove ? spot + ", taken off" : rename);
            }
            if (across == null || down == null) {
                throw new UsageException("Say where the spot is: --across and --down, each from 0 to 1, as a share from the left and from the top.");
            }
            SpotPlace typed = ModelFactory.eINSTANCE.createSpotPlace();
            new Inputs().put("across", across).put("down", down).fill(typed, services.clock());
            session.execute("Put " + spot + " on the map", edit -> SpotMaps.put(edit, map, spot, typed.getAcross(), typed.getDown()));
            return reply.words("spot", spot).result("across", Value.number(typed.getAcross(), "1", Reply.OWN_RECORD)).result("down", Value.number(typed.getDown(), "1",
                    Reply.OWN_RECORD));
        }
    }

    @Command(name = "show", aliases = "list", description = "Show a map: what can be drawn on it, or one of these as words and as a drawing; all maps when none is named.", mixinStandardHelpOptions = true,
            footer = { "", "Example: flexwright map show \"hard spots\" --property shore-a --of T07 --svg hard-spots.svg" })
    static final class Show extends ProjectCall {
        private static final int ACROSS = 56;
        private static final int FEW = 5;
        @Parameters(arity = "0..1", paramLabel = "MAP", description = "Title of the map.")
        String title;
        @Option(names = "--property", description = "Which property; the one read at most spots when left out.")
        String property;
        @Option(names = "--of", paramLabel = "WHOSE", description = "A trial, a trial and part such as \"T07 P1\", the reference part or a control piece.")
        String of;
        @Option(names = "--dwell", description = "Only readings after this dwell, e.g. 3s.")
        String dwell;
        @Option(names = "--svg", paramLabel = "FILE", description = "Write the drawing into this file.")
        Path svg;

        @Override
        protected boolean writes() {
            return false;
        }

        @Override
        protected Reply work(CliServices services, ProjectSession session) {
            Reply reply = new Reply(id());
            if (title == null && session.project().getSpotMaps().size() != 1) {
                session.project().getSpotMaps().forEach(map -> reply.line(map.getTitle() + ": " + Words.count(map.getPlaces().size(), "spot")).item(Map.of("map", String.valueOf(map
                        .getTitle()), "spots", map.getPlaces().size())));
                return session.project().getSpotMaps().isEmpty() ? reply.line("There is no spot map yet: flexwright map add makes one.") : reply;
            }
            SpotMap map = title == null ? session.project().getSpotMaps().get(0) : Find.one("spot map", session.project().getSpotMaps(), SpotMap::getTitle, title);
            reply.words("map", map.getTitle());
            reply.line(map.getTitle() + ", " + (map.getPicture() == null ? SpotSketch.orSheet(map.getSketch()).title() : "photo " + map.getPicture().getFileName()));
            List<SpotView.Offer> all = SpotView.offers(session.project(), map, services.registries().properties());
            List<SpotView.Offer> offers = all.stream().filter(offer -> wanted(services, offer)).toList();
            if (offers.isEmpty()) {
                map.getPlaces().forEach(place -> reply.line("  " + place.getSpot() + ": across " + FieldText.digits(place.getAcross()) + ", down " + FieldText.digits(place.getDown())));
                if (property != null || of != null || dwell != null || svg != null) {
                    throw new UsageException(all.isEmpty() ? "Nothing was read at a spot of this map yet; readings name their spot with --spot."
                            : "Nothing like that was read at its spots; there are: " + String.join("; ", all.stream().map(SpotView.Offer::words).toList()) + ".");
                }
                return reply.line("Nothing was read at these spots yet.");
            }
            show(services, session, map, SpotView.of(map, offers.get(0)), reply);
            if (offers.size() > 1) {
                String more = offers.size() > FEW + 1 ? "; and " + (offers.size() - FEW - 1) + " more, chosen with --of" : "";
                reply.line("Also: " + String.join("; ", offers.stream().skip(1).limit(FEW).map(SpotView.Offer::words).toList()) + more);
            }
            return reply;
        }

        private boolean wanted(CliServices services, SpotView.Offer offer) {
            PropertyDef def = property == null ? null : Find.property(services.registries().properties(), property);
            Double after = TargetNoun.Conditions.dwell(dwell, services);
            String asked = of == null ? "" : of.strip().toLowerCase(Locale.ROOT);
            String there = offer.whose().toLowerCase(Locale.ROOT);
            boolean whose = of == null || there.equals(asked) || there.startsWith(asked + ",") || there.endsWith(" " + asked);
            return whose && (def == null || def.id().equals(offer.property().id())) && (after == null || after.equals(offer.key().getDwell()));
        }

        private void show(CliServices services, ProjectSession session, SpotMap map, SpotView view, Reply reply) {
            reply.line(view.title());
            picture(map, view).forEach(reply::line);
            for (SpotView.Dot dot : view.dots()) {
                reply.line("  " + dot.words());
                Map<String, Object> row = new LinkedHashMap<>();
                row.put("spot", dot.place().getSpot());
                row.put("across", dot.place().getAcross());
                row.put("down", dot.place().getDown());
                row.put("value", dot.read() ? dot.value() : null);
                row.put("unit", view.property().kind().unit().symbol());
                row.put("words", dot.words());
                reply.item(row);
            }
            view.notes().forEach((Message note) -> reply.line("  " + note.text()));
            if (svg != null) {
                Path file = services.workingFolder().resolve(svg);
                try {
                    Files.writeString(file, SpotFile.svg(map, view, session.folder()), StandardCharsets.UTF_8);
                } catch (IOException e) {
                    throw new CliException("The file " + svg + " cannot be written.", e);
                }
                reply.words("file", svg.toString());
            }
        }

        /** The spots' values where they are, drawn with letters. */
        private static List<String> picture(SpotMap map, SpotView view) {
            double aspect = SpotSketch.orSheet(map.getSketch()).aspect();
            int rows = (int) Math.max(6, Math.round(ACROSS / aspect / 2.2));
            char[][] cells = new char[rows + 1][ACROSS + 1];
            for (char[] row : cells) {
                Arrays.fill(row, ' ');
            }
            if (map.getPicture() == null) {
                SpotSketch.orSheet(map.getSketch()).lines().forEach(line -> line(cells, line));
            }
            for (SpotView.Dot dot : view.dots()) {
                String words = "[" + dot.figure() + "]";
                int row = (int) Math.round(dot.place().getDown() * rows);
                int from = (int) Math.clamp(Math.round(dot.place().getAcross() * ACROSS) - words.length() / 2, 0, ACROSS + 1 - words.length());
                words.getChars(0, words.length(), cells[row], from);
            }
            return Arrays.stream(cells).map(row -> "  " + new String(row).stripTrailing()).toList();
        }

        private static void line(char[][] cells, List<double[]> line) {
            int rows = cells.length - 1;
            for (int i = 1; i < line.size(); i++) {
                for (int k = 0; k <= 20; k++) {
                    double across = line.get(i - 1)[0] + (line.get(i)[0] - line.get(i - 1)[0]) * k / 20;
                    double down = line.get(i - 1)[1] + (line.get(i)[1] - line.get(i - 1)[1]) * k / 20;
                    cells[(int) Math.round(down * rows)][(int) Math.round(across * ACROSS)] = '.';
                }
            }
        }
    }
}
