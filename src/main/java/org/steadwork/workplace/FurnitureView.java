package org.steadwork.workplace;

import java.util.List;

/** The page of a desk or chair: its sizes and, for clinicians ({@code names}), who was assessed there. */
record FurnitureView(Furniture piece, List<SizeRow> sizes, boolean names, List<Sitter> sitters) {

    /** One size; {@code how} says how and when it was known, null when it is not known. */
    record SizeRow(String label, String amount, String how) {
    }
}
