package org.steadwork.workplace;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import org.steadwork.workplace.photo.PhotoIntake;

/** The bytes of a photograph, JPEG; apart from its record, and gone when it is withdrawn. Not audited: a history would keep what is to go. */
@Entity
@Table(name = "workplace_photo_image")
class PhotoImage {

    private static final int LARGEST_BYTES = PhotoIntake.MOST_KEPT_BYTES;

    @Id
    @Column(name = "photo_id")
    private Long photoId;

    @Column(length = LARGEST_BYTES)
    private byte[] picture;

    @Column(length = LARGEST_BYTES)
    private byte[] thumbnail;

    protected PhotoImage() {
    }

    PhotoImage(long photoId, byte[] picture, byte[] thumbnail) {
        this.photoId = photoId;
        this.picture = picture;
        this.thumbnail = thumbnail;
    }
}
