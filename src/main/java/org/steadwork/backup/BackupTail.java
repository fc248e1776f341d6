package org.steadwork.backup;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import java.util.Map;
import org.steadwork.account.trail.TrailHead;

/**
 * What a backup says after its rows.
 *
 * @param sequences the next number of each, read after the rows, so never behind them
 * @param digests   by table, the {@link RowDigest} of its rows
 * @param trailEnd  where the file beside the database said that the audit trail ends; null in older backups, and where there was no file
 */
@JsonIgnoreProperties(ignoreUnknown = true)
record BackupTail(Map<String, Long> sequences, Map<String, String> digests, TrailHead trailEnd) {
}
