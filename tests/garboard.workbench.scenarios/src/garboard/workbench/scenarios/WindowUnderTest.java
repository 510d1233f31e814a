// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.scenarios;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

import org.eclipse.core.runtime.Platform;
import org.eclipse.e4.core.contexts.IEclipseContext;
import org.eclipse.e4.ui.internal.workbench.swt.E4Application;
import org.eclipse.e4.ui.model.application.ui.basic.MWindow;
import org.eclipse.e4.ui.workbench.IWorkbench;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;

/** The real application in a window of its own, on a thread of its own, inside the framework that runs the tests. */
public final class WindowUnderTest implements AutoCloseable {

    private static final Duration LONGEST = Duration.ofSeconds(60);

    private final Thread thread;
    private final AtomicReference<Throwable> fault = new AtomicReference<>();
    private final AtomicReference<Display> display = new AtomicReference<>();
    private volatile Shell shell;

    private WindowUnderTest(String... arguments) {
        CountDownLatch made = new CountDownLatch(1);
        this.thread = new Thread(() -> run(made, arguments), "window under test");
    }

    /** Starts the application and waits for its window. @param arguments as on the command line */
    public static WindowUnderTest start(String... arguments) {
        var window = new WindowUnderTest(arguments);
        window.thread.start();
        window.await("the window of the application", () -> window.find().isPresent());
        window.shell = window.find().orElseThrow();
        return window;
    }

    private void run(CountDownLatch made, String... arguments) {
        try {
            display.set(Display.getDefault());
            made.countDown();
            new E4Application().start(new ProductContext(arguments));
        } catch (Throwable broken) {
            fault.set(broken);
        }
    }

    private Optional<Shell> find() {
        Display now = display.get();
        if (now == null || now.isDisposed()) {
            return Optional.empty();
        }
        // e4 keeps a hidden shell of its own; the window's model hangs at the real one.
        return onWindow(() -> Arrays.stream(now.getShells()).filter(one -> one.isVisible() && one.getData("modelElement") instanceof MWindow)
            .findFirst());
    }

    public Display display() {
        return display.get();
    }

    public Shell shell() {
        return shell;
    }

    /** {@return the context of the window, in which its services are} */
    public IEclipseContext context() {
        return onWindow(() -> ((MWindow) shell.getData("modelElement")).getContext());
    }

    /** {@return the folder where the program keeps what belongs to the person} */
    public Path userFolder() {
        // Such a URL is not encoded: a blank in it is a blank.
        return Path.of(Platform.getInstanceLocation().getURL().getPath());
    }

    /** Does something on the thread of the window and waits for it. */
    public <T> T onWindow(Supplier<T> task) {
        Display now = display.get();
        var result = new AtomicReference<T>();
        var broken = new AtomicReference<Throwable>();
        now.syncExec(() -> {
            try {
                result.set(task.get());
            } catch (RuntimeException | AssertionError thrown) {
                broken.set(thrown);
            }
        });
        if (broken.get() instanceof AssertionError failed) {
            throw failed;
        }
        if (broken.get() instanceof RuntimeException thrown) {
            throw thrown;
        }
        return result.get();
    }

    public void onWindow(Runnable task) {
        onWindow(() -> {
            task.run();
            return null;
        });
    }

    private void await(String what, java.util.function.BooleanSupplier holds) {
        long end = System.nanoTime() + LONGEST.toNanos();
        var pause = new CountDownLatch(1);
        while (!holds.getAsBoolean()) {
            if (fault.get() != null) {
                throw new AssertionError("The application ended by itself while waiting for " + what, fault.get());
            }
            if (System.nanoTime() > end) {
                throw new AssertionError("In vain waited for " + what);
            }
            try {
                pause.await(20, TimeUnit.MILLISECONDS);
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
                throw new AssertionError("Stopped while waiting for " + what, stopped);
            }
        }
    }

    /** Ends the application as if the person had quit and had nothing to save. */
    @Override
    public void close() {
        if (display.get() != null && !display.get().isDisposed()) {
            IWorkbench workbench = context().get(IWorkbench.class);
            display.get().asyncExec(workbench::close);
        }
        try {
            thread.join(LONGEST.toMillis());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        if (fault.get() != null) {
            throw new AssertionError("The application ended in a fault", fault.get());
        }
        if (thread.isAlive()) {
            throw new AssertionError("The application did not end: " + Arrays.toString(thread.getStackTrace()));
        }
    }
}
