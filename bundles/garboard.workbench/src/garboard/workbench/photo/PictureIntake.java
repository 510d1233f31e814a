// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.photo;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.widgets.Control;

import garboard.session.photo.Picture;
import garboard.session.photo.PictureException;
import garboard.session.photo.PictureException.Reason;
import garboard.session.photo.RecordPhotographs.Found;
import garboard.workbench.Desk;
import garboard.workbench.ask.Ask;
import garboard.workbench.ask.FileQuestion;
import garboard.workbench.ask.Question;
import garboard.workbench.text.Texts;

/**
 * Takes pictures in: files that are chosen or dropped, pictures and files from the clipboard. They are read in the background; huge ones are
 * asked about; what is no picture is told in a sentence each.
 */
public final class PictureIntake {

    private static final double MEGABYTE = 1_000_000.0;

    private final Control owner;
    private final Ask ask;
    private final Texts.Of texts;
    private final Consumer<List<Found>> taker;
    private final Consumer<List<String>> complaints;

    /** A picture as it came in, or why it cannot be kept. */
    private record Read(String name, Optional<Picture> picture, Optional<Reason> refused) {
    }

    /** @param taker gets what can be kept @param complaints gets a sentence for each that cannot; none when all is well */
    public PictureIntake(Control owner, Desk desk, Ask ask, Consumer<List<Found>> taker, Consumer<List<String>> complaints) {
        this.owner = owner;
        this.ask = ask;
        this.texts = desk.texts(PictureIntake.class);
        this.taker = taker;
        this.complaints = complaints;
    }

    /** Takes files that are dropped on a control. */
    public void dropOn(Control control) {
        var target = new DropTarget(control, DND.DROP_COPY | DND.DROP_LINK | DND.DROP_DEFAULT);
        target.setTransfer(FileTransfer.getInstance());
        target.addDropListener(new DropTargetAdapter() {
            @Override
            public void dragEnter(DropTargetEvent event) {
                if (event.detail == DND.DROP_DEFAULT) {
                    event.detail = DND.DROP_COPY;
                }
            }

            @Override
            public void drop(DropTargetEvent event) {
                if (event.data instanceof String[] files) {
                    take(Arrays.stream(files).map(Path::of).toList());
                }
            }
        });
    }

    /** Asks for files and takes them. */
    public void choose() {
        take(ask.filesToOpen(FileQuestion.toOpen("pictures", texts.get("choose.title"), Optional.empty(),
            new FileQuestion.Kind(texts.get("choose.kind"), List.of(".jpg", ".jpeg", ".png")))));
    }

    /** Takes what is on the clipboard: files, or a picture. */
    public void paste() {
        var clipboard = new Clipboard(owner.getDisplay());
        try {
            if (clipboard.getContents(FileTransfer.getInstance()) instanceof String[] files && files.length > 0) {
                take(Arrays.stream(files).map(Path::of).toList());
            } else if (clipboard.getContents(ImageTransfer.getInstance()) instanceof ImageData image) {
                takeAll(List.of(() -> read("", png(image))));
            } else {
                complaints.accept(List.of(texts.get("paste.nothing")));
            }
        } finally {
            clipboard.dispose();
        }
    }

    private static byte[] png(ImageData image) {
        var loader = new ImageLoader();
        loader.data = new ImageData[] {image};
        var bytes = new ByteArrayOutputStream();
        loader.save(bytes, SWT.IMAGE_PNG);
        return bytes.toByteArray();
    }

    /** Takes files. */
    public void take(List<Path> files) {
        takeAll(files.stream().<Supplier<Read>>map(file -> () -> read(file)).toList());
    }

    private void takeAll(List<Supplier<Read>> sources) {
        if (!sources.isEmpty()) {
            complaints.accept(List.of());
            CompletableFuture.supplyAsync(() -> sources.stream().map(Supplier::get).toList()).thenAccept(read -> later(() -> sort(read)));
        }
    }

    private void later(Runnable task) {
        if (!owner.isDisposed()) {
            owner.getDisplay().asyncExec(() -> {
                if (!owner.isDisposed()) {
                    task.run();
                }
            });
        }
    }

    private static Read read(Path file) {
        String name = file.getFileName() == null ? file.toString() : file.getFileName().toString();
        try {
            return read(name, Files.readAllBytes(file));
        } catch (IOException | OutOfMemoryError unreadable) {
            return new Read(name, Optional.empty(), Optional.of(Reason.UNREADABLE));
        }
    }

    private static Read read(String name, byte[] bytes) {
        try {
            return new Read(name, Optional.of(Picture.of(bytes)), Optional.empty());
        } catch (PictureException refused) {
            return new Read(name, Optional.empty(), Optional.of(refused.reason()));
        }
    }

    private void sort(List<Read> all) {
        complaints.accept(all.stream().filter(read -> read.refused.isPresent())
            .map(read -> texts.get("refused." + read.refused.get().name(), read.name)).toList());
        List<Read> pictures = all.stream().filter(read -> read.picture.isPresent()).toList();
        List<Read> huge = pictures.stream().filter(read -> read.picture.get().isHuge()).toList();
        String answer = pictures.isEmpty() ? "leave" : huge.isEmpty() ? "keep" : ask.choose(question(huge));
        switch (answer) {
            case "keep" -> hand(pictures);
            case "scale" -> CompletableFuture.supplyAsync(() -> pictures.stream().map(PictureIntake::scaled).toList())
                .thenAccept(scaled -> later(() -> hand(scaled)));
            default -> { }
        }
    }

    private Question question(List<Read> huge) {
        double megabytes = huge.stream().mapToLong(read -> read.picture.get().bytes()).sum() / MEGABYTE;
        var lines = new ArrayList<String>();
        huge.forEach(read -> lines.add(texts.get("huge.line", read.name, read.picture.get().width(), read.picture.get().height(),
            String.format(java.util.Locale.ROOT, "%.1f", read.picture.get().bytes() / MEGABYTE))));
        return Question.of("hugePictures", Question.Tone.QUESTION, texts.get("huge.title"),
            texts.get("huge.sentence", huge.size(), String.format(java.util.Locale.ROOT, "%.1f", megabytes)),
            new Question.Answer("scale", texts.get("huge.scale")), new Question.Answer("keep", texts.get("huge.keep")),
            new Question.Answer("leave", texts.get("huge.leave"))).with(lines);
    }

    private static Read scaled(Read read) {
        try {
            return read.picture.get().isHuge() ? new Read(read.name, Optional.of(read.picture.get().scaledDown()), Optional.empty()) : read;
        } catch (PictureException cannot) {
            return read; // it could be read before; then it is kept as it is
        }
    }

    private void hand(List<Read> pictures) {
        taker.accept(pictures.stream().map(read -> new Found(read.picture.orElseThrow(), captionOf(read.name))).toList());
    }

    /** What a camera calls its files says nothing; what a person called one is a caption to begin with. */
    static String captionOf(String file) {
        String name = file.replaceAll("\\.[A-Za-z]{3,4}$", "").replace('_', ' ').strip();
        return name.matches("(?i)(img|dsc|dscn|dscf|pxl|p|photo|image|screenshot|wa|signal)?[ -]*[\\d ()T.-]*(wa\\d+)?") ? "" : name;
    }
}
