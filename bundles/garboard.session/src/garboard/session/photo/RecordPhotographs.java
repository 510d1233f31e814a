// SPDX-License-Identifier: EPL-2.0
package garboard.session.photo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.InspectionAnswer;
import garboard.model.Photograph;
import garboard.session.Edits;
import garboard.session.OpenRecord;

/** The photographs of an open record: added, taken out, laid to answers. Each of these is one step to undo. */
public final class RecordPhotographs {

    private final OpenRecord open;

    public RecordPhotographs(OpenRecord open) {
        this.open = open;
    }

    public List<Photograph> all() {
        return List.copyOf(open.record().getPhotographs());
    }

    /** A picture with what is known of it. @param caption what the file was called, to begin with */
    public record Found(Picture picture, String caption) {
    }

    /** Adds pictures, each dated by its camera where that noted the day. @return them, with their ids */
    public List<Photograph> add(List<Found> found, String label) {
        var added = new ArrayList<Photograph>();
        open.edits().together(label, () -> found.forEach(one -> added.add(open.edits().add(open.record(),
            List.of(Literals.COMMISSIONING_RECORD__PHOTOGRAPHS), photograph(one), label))));
        return added;
    }

    /** Adds pictures and lays them to an answer. */
    public List<Photograph> addTo(InspectionAnswer answer, List<Found> found, String label) {
        var added = new ArrayList<Photograph>();
        open.edits().together(label, () -> {
            added.addAll(add(found, label));
            added.forEach(photograph -> lay(answer, photograph, label));
        });
        return added;
    }

    private static Photograph photograph(Found found) {
        Photograph photograph = GarboardFactory.eINSTANCE.createPhotograph();
        photograph.setData(found.picture().data());
        photograph.setMediaType(found.picture().mediaType());
        if (!found.caption().isBlank()) {
            photograph.setCaption(found.caption());
        }
        Optional<LocalDate> taken = found.picture().takenOn();
        taken.ifPresent(photograph::setTakenOn);
        return photograph;
    }

    /** Takes a photograph out of the record, and away from the answers that it was laid to. */
    public void remove(Photograph photograph, String label) {
        open.edits().remove(List.of(photograph), label);
    }

    /** Lays a photograph to an answer, after those that lie there. */
    public void lay(InspectionAnswer answer, Photograph photograph, String label) {
        if (!answer.getPhotographs().contains(photograph)) {
            List<Photograph> now = new ArrayList<>(answer.getPhotographs());
            now.add(photograph);
            set(answer, now, label);
        }
    }

    /** Takes a photograph away from an answer; it stays in the record. */
    public void takeAway(InspectionAnswer answer, Photograph photograph, String label) {
        List<Photograph> now = new ArrayList<>(answer.getPhotographs());
        if (now.remove(photograph)) {
            set(answer, now, label);
        }
    }

    private void set(InspectionAnswer answer, List<Photograph> photographs, String label) {
        open.edits().setAll(List.of(new Edits.Setting(answer, Literals.INSPECTION_ANSWER__PHOTOGRAPHS, photographs)), label);
    }

    /** {@return the answers that a photograph is laid to} */
    public List<InspectionAnswer> answersWith(Photograph photograph) {
        CommissioningRecord record = open.record();
        return record.getInspections().stream().filter(answer -> answer.getPhotographs().contains(photograph)).toList();
    }
}
