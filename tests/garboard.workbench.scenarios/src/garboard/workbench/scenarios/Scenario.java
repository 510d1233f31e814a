// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.scenarios;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.extension.TestExecutionExceptionHandler;
import org.junit.jupiter.api.io.TempDir;

import garboard.workbench.Desk;

/** A scenario: a window, a hand, answers to what is asked outside the window. A picture is kept of the screen where it fails. */
public abstract class Scenario {

    @TempDir
    protected Path folder;

    private ExtensionContext context;
    private OneWindow one;
    private Hand hand;

    @RegisterExtension
    final BeforeEachCallback run = extension -> context = extension;

    @RegisterExtension
    final TestExecutionExceptionHandler pictures = this::keepPicture;

    /** {@return the hand that the test bundle moves} */
    protected abstract Hand hand(WindowUnderTest opened);

    /** {@return the id of the application that moves such a hand in a process of its own} */
    protected abstract String childApplication();

    /** Puts the window on its start page, whatever a scenario before left open. */
    protected final Hand open() {
        one = OneWindow.of(context);
        hand = hand(one.window());
        answers().discardWhenAsked(true);
        if (desk().open().isPresent()) {
            hand.menu("Record", "Close the record");
        }
        hand.await("the start page", () -> desk().open().isEmpty() && hand.canUse("start.new"));
        answers().discardWhenAsked(false);
        return hand;
    }

    protected final WindowUnderTest window() {
        return one.window();
    }

    protected final Desk desk() {
        return one.window().context().get(Desk.class);
    }

    /** {@return what the person answers to file dialogs and questions} */
    protected final Answers answers() {
        return one.answers();
    }

    private void keepPicture(ExtensionContext extension, Throwable failed) throws Throwable {
        if (hand != null) {
            Path pictureFolder = Files.createDirectories(Path.of("target", "pictures"));
            Path file = pictureFolder.resolve(extension.getRequiredTestClass().getSimpleName() + "-" + extension.getRequiredTestMethod().getName() + ".png");
            try {
                hand.picture(file.toAbsolutePath());
                failed.addSuppressed(new IOException("The screen at that moment: " + file.toAbsolutePath()));
            } catch (RuntimeException | Error noPicture) {
                failed.addSuppressed(noPicture);
            }
        }
        throw failed;
    }
}
