// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.start;

import java.io.IOException;
import java.util.Optional;

import jakarta.inject.Inject;
import jakarta.inject.Named;

import org.eclipse.e4.core.di.annotations.Creatable;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.swt.widgets.Shell;

import garboard.examples.Example;
import garboard.model.io.RecordReadException;
import garboard.session.files.Filing;
import garboard.workbench.Desk;
import garboard.workbench.text.Texts;

/** Starting from one of the examples. */
@Creatable
public final class ExampleChoice {

    @Inject
    private Desk desk;
    @Inject
    private Filing filing;
    @Inject
    @Named(IServiceConstants.ACTIVE_SHELL)
    private Shell shell;

    /** Asks which, and opens it. */
    public void choose() {
        new ExampleDialog(shell, desk).choose().ifPresent(this::open);
    }

    /** Opens an example as a record that is not saved anywhere. */
    void open(Example example) {
        try {
            filing.create(example.open(), example.name());
        } catch (IOException | RecordReadException broken) {
            throw new IllegalStateException("The example " + example.name() + " comes with the program and cannot be read", broken);
        }
    }

    /** {@return what an example shows, in the language of the window} */
    static String title(Example example, Texts.Of texts) {
        String key = "example." + example.name();
        return Optional.of(key).filter(texts::has).map(one -> texts.get(one)).orElse(example.title());
    }
}
