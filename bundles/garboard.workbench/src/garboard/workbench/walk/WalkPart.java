// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.walk;

import jakarta.annotation.PostConstruct;
import jakarta.inject.Inject;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import garboard.workbench.Desk;

/** TODO */
public final class WalkPart {

    @Inject
    private Desk desk;

    @PostConstruct
    void create(Composite parent) {
        new Label(parent, SWT.NONE).setText("WalkPart");
    }
}
