package org.flexwright.report.photo;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.flexwright.core.label.LabelCode;
import org.flexwright.core.label.LabelException;
import org.flexwright.model.Project;
import org.flexwright.model.Trial;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import com.google.zxing.qrcode.QRCodeReader;

/** Finds label codes in photos: several in one, small ones in large photos. */
public final class CodeReader {
    /** Sizes at which a photo is searched: a code that fills it is found in the small one, one in a corner in the large. */
    private static final int[] SIZES = { 1000, 2000, 4000 };
    private static final Map<DecodeHintType, Object> HINTS = Map.of(DecodeHintType.TRY_HARDER, Boolean.TRUE, DecodeHintType.POSSIBLE_FORMATS, List.of(
            BarcodeFormat.QR_CODE), DecodeHintType.CHARACTER_SET, "UTF-8");

    private CodeReader() {
    }

    /** What the QR codes in a picture file say, each once; empty when there is none, or the file is no picture that can be read. */
    public static List<String> texts(byte[] bytes) {
        List<String> texts = new ArrayList<>();
        int before = 0;
        for (int size : SIZES) {
            BufferedImage image;
            try {
                image = PictureReader.decoded(bytes, size);
            } catch (Photos.NotShown e) {
                return List.of();
            }
            if (image.getWidth() == before) {
                break;
            }
            before = image.getWidth();
            search(image, texts);
            if (!texts.isEmpty()) {
                break;
            }
        }
        return List.copyOf(texts);
    }

    /** The same for a file. */
    public static List<String> texts(Path file) {
        try {
            return texts(Files.readAllBytes(file));
        } catch (IOException e) {
            return List.of();
        }
    }

    /**
     * What a photo shows by its labels: the one trial that they lead to, alone or by a part, else why not.
     *
     * @param trial   the trial, or empty
     * @param refusal one sentence why there is none; empty when there is one
     */
    public record Proposal(Optional<Trial> trial, String refusal) {
    }

    /** The trial whose label is in a photo. */
    public static Proposal propose(Path photo, Project project) {
        List<String> texts = texts(photo);
        if (texts.isEmpty()) {
            return new Proposal(Optional.empty(), "No label was found in " + photo.getFileName() + ": name the trial, or take the photo again with the label flat, sharp and in the light.");
        }
        List<Trial> trials = new ArrayList<>();
        String refusal = "";
        for (String text : texts) {
            try {
                LabelCode code = LabelCode.parse(text);
                Optional<Trial> trial = code.trial(project);
                trial.filter(t -> !trials.contains(t)).ifPresent(trials::add);
                if (trial.isEmpty()) {
                    refusal = "The label " + text + " in " + photo.getFileName() + " is on a " + code.kind().name().toLowerCase(java.util.Locale.ROOT)
                            + " and leads to no trial: name the trial.";
                }
            } catch (LabelException e) {
                refusal = e.getMessage();
            }
        }
        if (trials.size() == 1) {
            return new Proposal(Optional.of(trials.get(0)), "");
        }
        return new Proposal(Optional.empty(), trials.isEmpty() ? refusal : photo.getFileName() + " shows labels of " + String.join(" and ", trials.stream().map(Trial::getCode)
                .toList()) + ": name the trial it belongs to.");
    }

    private static void search(BufferedImage image, List<String> texts) {
        BinaryBitmap bitmap = new BinaryBitmap(new HybridBinarizer(new Light(image)));
        try {
            for (Result result : new QRCodeMultiReader().decodeMultiple(bitmap, HINTS)) {
                add(result, texts);
            }
        } catch (NotFoundException e) {
            one(bitmap, texts);
        }
    }

    private static void one(BinaryBitmap bitmap, List<String> texts) {
        try {
            add(new QRCodeReader().decode(bitmap, HINTS), texts);
        } catch (com.google.zxing.ReaderException e) {
            // nothing there: that is an answer
        }
    }

    private static void add(Result result, List<String> texts) {
        if (result.getText() != null && !texts.contains(result.getText())) {
            texts.add(result.getText());
        }
    }
}
