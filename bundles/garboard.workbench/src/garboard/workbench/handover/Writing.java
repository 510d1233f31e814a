// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handover;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;

import garboard.model.io.RecordWriteException;
import garboard.report.excel.Progress;
import garboard.session.handover.ReportSource;
import garboard.session.handover.WritingTrouble;

/** A workbook being written on a thread of its own. */
final class Writing {

    private final Workbook workbook;
    private final ReportSource source;
    private final Path target;
    private final Consumer<News> listener;
    private final Thread thread;
    private volatile boolean cancelled;

    /** What the one who waits is told, on the thread that writes. */
    sealed interface News {

        /** How far it is. */
        record At(String what, int done, int total) implements News {
        }

        record Written() implements News {
        }

        /** It was stopped; nothing was left behind. */
        record Stopped() implements News {
        }

        record Failed(WritingTrouble trouble) implements News {
        }
    }

    /** @param listener called on the thread that writes; after anything but {@link News.At} nothing more comes */
    Writing(Workbook workbook, ReportSource source, Path target, Consumer<News> listener) {
        this.workbook = workbook;
        this.source = source;
        this.target = target;
        this.listener = listener;
        this.thread = new Thread(this::run, "writes " + target.getFileName());
    }

    Path target() {
        return target;
    }

    Workbook workbook() {
        return workbook;
    }

    void start() {
        thread.start();
    }

    /** Stops it: the thread is woken from whatever it waits for, and clears away what it has begun. */
    void cancel() {
        cancelled = true;
        thread.interrupt();
    }

    /** Waits until the thread is done, for a while. */
    void join(long millis) throws InterruptedException {
        thread.join(millis);
    }

    private void run() {
        listener.accept(result());
    }

    private News result() {
        try {
            var foreseen = WritingTrouble.foreseen(target);
            if (foreseen.isPresent()) {
                return new News.Failed(foreseen.get());
            }
            workbook.write(source, target, new Watched());
            return cancelled && workbook == Workbook.FORM ? new News.Stopped() : new News.Written();
        } catch (CancellationException stopped) {
            return new News.Stopped();
        } catch (IOException | RecordWriteException failed) {
            return cancelled ? new News.Stopped() : new News.Failed(WritingTrouble.of(target, failed));
        } catch (RuntimeException | Error fault) {
            // The person must hear of it, and the log has the rest.
            System.getLogger(Writing.class.getName()).log(System.Logger.Level.ERROR, "Writing " + target + " failed", fault);
            return new News.Failed(WritingTrouble.of(target, fault));
        }
    }

    private final class Watched implements Progress {
        @Override
        public void at(String what, int done, int total) {
            if (done < total) {
                listener.accept(new News.At(what, done, total));
            }
        }

        @Override
        public boolean cancelled() {
            return cancelled;
        }
    }
}
