package org.steadwork.demo;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

/** A part of the demo clinic that has been loaded. Any row marks the whole database as the demo's. */
@Entity
@Table(name = "demo_part")
class DemoPart {

    @Id
    private String part;

    @Column(name = "loaded_at")
    private Instant loadedAt;

    protected DemoPart() {
    }

    DemoPart(String part, Instant loadedAt) {
        this.part = part;
        this.loadedAt = loadedAt;
    }

    Instant loadedAt() {
        return loadedAt;
    }
}
