package org.steadwork.backup;

import java.util.Map;

/**
 * What a backup says after its rows.
 *
 * @param sequences the next number of each, read after the rows, so never behind them
 * @param digests   by table, the {@link RowDigest} of its rows
 */
record BackupTail(Map<String, Long> sequences, Map<String, String> digests) {
}
