package org.steadwork.diary;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Query;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * The cells of time that live appointments hold of clinicians, rooms and patients. The key of the table is the law of the diary: of two
 * bookings made at one moment the database takes one and refuses the other.
 */
@ApplicationScoped
class TakenSlots {

    @Inject
    EntityManager db;

    private record Cell(String what, long whose, int number) {
    }

    /** Takes the cells of an appointment in one statement, always in one order, so that two takers never wait for each other in a ring. */
    void take(Appointment appointment) {
        List<Cell> cells = new ArrayList<>();
        add(cells, appointment, "clinician", appointment.clinician().id());
        add(cells, appointment, "patient", appointment.patient().id());
        if (appointment.room() != null) {
            add(cells, appointment, "room", appointment.room().id());
        }
        StringBuilder sql = new StringBuilder("insert into taken_slot (what, whose_id, taken_on, cell, appointment_id) values ");
        for (int i = 0; i < cells.size(); i++) {
            sql.append(i == 0 ? "" : ", ").append("(?, ?, ?, ?, ?)");
        }
        Query insert = db.createNativeQuery(sql.toString());
        int at = 1;
        for (Cell cell : cells) {
            insert.setParameter(at++, cell.what()).setParameter(at++, cell.whose()).setParameter(at++, appointment.day())
                    .setParameter(at++, cell.number()).setParameter(at++, appointment.id());
        }
        insert.executeUpdate();
    }

    void release(Appointment appointment) {
        db.createNativeQuery("delete from taken_slot where appointment_id = ?1").setParameter(1, appointment.id()).executeUpdate();
    }

    /** True when somebody else holds a part of this time already. */
    boolean anyTaken(String what, long whose, LocalDate day, int start, int minutes, Long exceptAppointment) {
        Number found = (Number) db.createNativeQuery("select count(*) from taken_slot where what = ?1 and whose_id = ?2 and taken_on = ?3"
                + " and cell >= ?4 and cell < ?5 and appointment_id <> ?6").setParameter(1, what).setParameter(2, whose).setParameter(3, day)
                .setParameter(4, start / DiaryContent.GRID).setParameter(5, (start + minutes) / DiaryContent.GRID)
                .setParameter(6, exceptAppointment == null ? -1L : exceptAppointment).getSingleResult();
        return found.longValue() > 0;
    }

    private static void add(List<Cell> cells, Appointment appointment, String what, long whose) {
        for (int minute = appointment.start(); minute < appointment.start() + appointment.minutes(); minute += DiaryContent.GRID) {
            cells.add(new Cell(what, whose, minute / DiaryContent.GRID));
        }
    }
}
