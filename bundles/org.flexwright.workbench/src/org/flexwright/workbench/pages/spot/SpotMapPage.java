package org.flexwright.workbench.pages.spot;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.flexwright.core.Message;
import org.flexwright.core.field.FieldDescriptor;
import org.flexwright.core.field.FieldDescriptors;
import org.flexwright.core.field.FieldText;
import org.flexwright.core.field.FormModel;
import org.flexwright.core.naming.Names;
import org.flexwright.core.trial.SpotMaps;
import org.flexwright.core.view.SpotSketch;
import org.flexwright.core.view.SpotView;
import org.flexwright.model.Attachment;
import org.flexwright.model.AttachmentKind;
import org.flexwright.model.ModelPackage;
import org.flexwright.model.SpotMap;
import org.flexwright.model.SpotPlace;
import org.flexwright.report.doc.Picture;
import org.flexwright.report.photo.Photos;
import org.flexwright.workbench.kit.Bindings;
import org.flexwright.workbench.kit.FormPane;
import org.flexwright.workbench.kit.Grid;
import org.flexwright.workbench.kit.Palette.Ink;
import org.flexwright.workbench.kit.Prose;
import org.flexwright.workbench.kit.Spacing;
import org.flexwright.workbench.pages.PageContext;
import org.flexwright.workbench.pages.common.Block;
import org.flexwright.workbench.pages.common.BlockPage;
import org.flexwright.workbench.pages.common.Flow;
import org.flexwright.workbench.pages.common.Listing;
import org.flexwright.workbench.pages.common.Listing.Column;
import org.flexwright.workbench.pages.common.PickBox;

/** A spot map: what is drawn on it, the picture with its spots, and the spots as a table. */
final class SpotMapPage extends BlockPage implements SpotCanvas.Hand {
    private static final List<FieldDescriptor> TITLE = List.of(FieldDescriptors.of(ModelPackage.Literals.SPOT_MAP__TITLE));
    private static final List<FieldDescriptor> SPOT = Stream.of(ModelPackage.Literals.SPOT_PLACE__SPOT, ModelPackage.Literals.SPOT_PLACE__ACROSS,
            ModelPackage.Literals.SPOT_PLACE__DOWN).map(FieldDescriptors::of).toList();
    private static final int MOST = 12;

    private final SpotMap map;
    private final PickBox<SpotView.Offer> what;
    private final PickBox<SpotSketch> sketch;
    private final PickBox<Attachment> photo;
    private final SpotCanvas canvas;
    private final Prose notes;
    private final Listing<SpotPlace> spots;
    private final Block chosenBlock;
    private final FormModel titleModel;
    private FormModel model;
    private SpotPlace chosen;
    private Attachment drawn;
    private List<SpotView.Dot> dots = List.of();
    private String wanted;

    SpotMapPage(Composite parent, PageContext context) {
        super(parent, context);
        map = (SpotMap) context.subject();
        Block head = new Block(body(), kit(), "Map", 1, Spacing.FIELDS);
        titleModel = FormModel.bound(context.session(), map, TITLE);
        FormPane title = new FormPane(head.body(), kit(), Bindings.of(titleModel, !writable()));
        title.setLayoutData(Grid.wide());
        Composite bar = Flow.pane(head.body(), kit(), Ink.PAPER);
        bar.setLayoutData(Grid.wide());
        kit().text(bar, "Shown");
        what = new PickBox<>(bar, kit(), "What is shown on the map", null, SpotView.Offer::words);
        what.whenChosen(offer -> {
            wanted = offer.words();
            show();
        });
        kit().text(bar, "on");
        photo = new PickBox<>(bar, kit(), "Photo under the spots", "a sketch", Names::of);
        photo.whenChosen(chosen -> doing().edit("lay a photo under the map", edit -> SpotMaps.picture(edit, map, chosen)));
        sketch = new PickBox<>(bar, kit(), "Sketch under the spots", null, SpotSketch::title);
        sketch.whenChosen(chosen -> doing().edit("choose a sketch", edit -> SpotMaps.sketch(edit, map, chosen.id())));
        photo.control().setEnabled(writable());
        sketch.control().setEnabled(writable());
        canvas = new SpotCanvas(body(), kit(), writable(), this);
        GridData room = Grid.wide();
        canvas.setLayoutData(room);
        notes = Prose.quiet(body(), kit(), " ");
        notes.setLayoutData(Grid.wide());
        Block list = new Block(body(), kit(), "Spots", 1, Spacing.FIELDS);
        if (writable()) {
            list.action("&Add a spot", () -> add(0.5, 0.5));
            list.action("Take it o&ff", () -> {
                if (chosen != null) {
                    remove(chosen);
                }
            });
        }
        spots = new Listing<>(list.body(), kit(), "Spots", MOST, List.of(Column.text("Spot", 14, place -> text(place.getSpot())), Column.text("Read", 48, this::words),
                Column.number("Across", 8, place -> place.getAcross() == null ? "" : FieldText.digits(place.getAcross())), Column.number("Down", 8,
                        place -> place.getDown() == null ? "" : FieldText.digits(place.getDown()))));
        spots.control().setLayoutData(Grid.wide());
        spots.whenChosen(this::choose);
        chosenBlock = new Block(body(), kit(), "Spot", 1, Spacing.FIELDS);
        chosenBlock.addDisposeListener(event -> {
            titleModel.close();
            close();
        });
        show();
        choose(map.getPlaces().isEmpty() ? null : map.getPlaces().getFirst());
        settle();
    }

    private static String text(String words) {
        return words == null ? "" : words;
    }

    private String words(SpotPlace place) {
        return dots.stream().filter(dot -> dot.place() == place).findFirst().map(dot -> {
            String words = dot.words();
            int colon = words.indexOf(": ");
            return colon < 0 ? words : words.substring(colon + 2);
        }).orElse("");
    }

    private void show() {
        List<SpotView.Offer> offers = SpotView.offers(context().session().project(), map, context().registries().properties());
        SpotView.Offer offer = offers.stream().filter(o -> o.words().equals(wanted)).findFirst().orElse(offers.isEmpty() ? null : offers.getFirst());
        what.show(offers, offer);
        what.control().setEnabled(!offers.isEmpty());
        photo.show(context().session().project().getAttachments().stream().filter(a -> a.getKind() == AttachmentKind.PHOTO).toList(), map.getPicture());
        sketch.show(SpotSketch.all(), SpotSketch.orSheet(map.getSketch()));
        sketch.control().setVisible(map.getPicture() == null);
        canvas.sketch(SpotSketch.orSheet(map.getSketch()));
        if (map.getPicture() != drawn) {
            drawn = map.getPicture();
            load(drawn);
        }
        SpotView view = offer == null ? null : SpotView.of(map, offer);
        dots = view == null ? SpotView.unread(map) : view.dots();
        if (chosen != null && !map.getPlaces().contains(chosen)) {
            choose(map.getPlaces().isEmpty() ? null : map.getPlaces().getFirst());
        }
        canvas.show(view, dots, chosen);
        notes.setWords(remarks(view));
        spots.show(map.getPlaces());
        spots.choose(chosen);
    }

    private String remarks(SpotView view) {
        String keys = writable() ? "Click to add a spot, drag to move it; with keys: Page Up and Down choose, arrows move, Insert adds, Delete takes off. A spot is read under its name." : "";
        String said = view == null ? "Nothing was read at these spots yet: give the spot by its name when you read. " : String.join(" ", view.notes().stream().map(Message::text).toList());
        return (said + " " + keys).strip();
    }

    private void close() {
        if (model != null) {
            model.close();
            model = null;
        }
    }

    @Override
    public void choose(SpotPlace place) {
        if (place == chosen && model != null) {
            return;
        }
        chosen = place;
        close();
        Composite body = chosenBlock.emptied();
        chosenBlock.setShown(place != null);
        if (place != null) {
            chosenBlock.setTitle("Spot " + text(place.getSpot()));
            model = FormModel.bound(context().session(), place, SPOT);
            new FormPane(body, kit(), Bindings.of(model, !writable())).setLayoutData(Grid.wide());
        }
        spots.choose(place);
        canvas.show(what.chosen() == null ? null : SpotView.of(map, what.chosen()), dots, place);
        settle();
    }

    @Override
    public void add(double across, double down) {
        SpotPlace[] made = new SpotPlace[1];
        if (doing().edit("add a spot", edit -> made[0] = SpotMaps.put(edit, map, SpotMaps.freeSpot(map), across, down))) {
            choose(made[0]);
        }
    }

    @Override
    public void move(SpotPlace place, double across, double down) {
        doing().edit("move " + text(place.getSpot()), edit -> SpotMaps.move(edit, place, across, down));
    }

    @Override
    public void remove(SpotPlace place) {
        doing().edit("take " + text(place.getSpot()) + " off the map", edit -> SpotMaps.remove(edit, place));
    }

    /** Reads the photo away from the screen's thread; one that cannot be shown leaves the sketch. */
    private void load(Attachment attachment) {
        canvas.picture(null);
        if (attachment == null) {
            return;
        }
        Photos photos = new Photos(context().session().folder());
        Display display = canvas.getDisplay();
        Job.createSystem("Reading a photo", (IProgressMonitor monitor) -> {
            Picture picture = photos.figure(attachment).picture();
            ImageData data = null;
            try {
                data = picture == null ? null : new ImageData(new ByteArrayInputStream(picture.bytes()));
            } catch (SWTException e) {
                data = null; // told below
            }
            ImageData read = data;
            if (!display.isDisposed()) {
                display.asyncExec(() -> take(attachment, read));
            }
            return Status.OK_STATUS;
        }).schedule();
    }

    private void take(Attachment attachment, ImageData data) {
        if (!canvas.isDisposed() && map.getPicture() == attachment) {
            canvas.picture(data);
            if (data == null) {
                doing().say("The photo " + Names.of(attachment) + " cannot be shown; the sketch stands in for it.");
            }
        }
    }

    @Override
    protected void refresh() {
        show();
        if (chosen != null) {
            chosenBlock.setTitle("Spot " + text(chosen.getSpot()));
        }
    }

    @Override
    public void reveal(EObject object, String feature) {
        if (object instanceof SpotPlace place && map.getPlaces().contains(place)) {
            choose(place);
        }
    }

    @Override
    public void setFocus() {
        canvas.setFocus();
    }
}
