// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.scenarios;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CountDownLatch;

import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;

/** The application of a {@link ChildProcess}: opens the window, does its deed, leaves a mark and waits to be ended. */
public abstract class ChildApplication implements IApplication {

    /** {@return the hand of this test bundle} */
    protected abstract Hand hand(WindowUnderTest window);

    @Override
    public final Object start(IApplicationContext context) throws Exception {
        List<String> arguments = Arrays.asList((String[]) context.getArguments().get(IApplicationContext.APPLICATION_ARGS));
        Deed deed = Deed.valueOf(arguments.get(arguments.indexOf("-deed") + 1));
        Path mark = Path.of(arguments.get(arguments.indexOf("-mark") + 1));
        var window = WindowUnderTest.start();
        String result = deed.run(hand(window), window);
        Path fresh = mark.resolveSibling("mark.fresh");
        Files.writeString(fresh, result);
        Files.move(fresh, mark, StandardCopyOption.ATOMIC_MOVE);
        new CountDownLatch(1).await();
        return IApplication.EXIT_OK;
    }

    @Override
    public final void stop() {
        // Ended from outside.
    }
}
