// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.Optional;
import java.util.stream.Stream;

import garboard.session.Stop;
import garboard.session.form.FormGroup;
import garboard.workbench.Desk;

/** The groups of fields that the form has for the trial. */
final class Groups {

    private Groups() {
    }

    static Optional<FormGroup> find(Desk desk, String id) {
        return Stream.of(Stop.FIRST_START, Stop.LOAD_TRIAL, Stop.SEA_RUN).flatMap(stop -> desk.form().at(stop).stream())
            .filter(group -> group.id().equals(id)).findFirst();
    }
}
