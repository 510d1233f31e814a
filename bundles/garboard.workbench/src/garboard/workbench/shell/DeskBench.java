// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.util.Optional;

import garboard.session.OpenRecord;
import garboard.session.files.Bench;
import garboard.workbench.Desk;

/** The desk, as files see it. */
record DeskBench(Desk desk) implements Bench {

    @Override
    public Optional<OpenRecord> open() {
        return desk.open();
    }

    @Override
    public void show(OpenRecord record) {
        desk.show(record);
    }

    @Override
    public void close() {
        desk.close();
    }
}
