package org.steadwork.oversight;

/**
 * Which page of many rows is shown, from 1.
 *
 * @param total how many rows there are in all
 */
public record AuditPaging(int page, int pages, long total, int rowsAPage) {

    /** Reads a page from an address; what is no page of these is the nearest that is. */
    static AuditPaging of(String typed, long total, int rowsAPage) {
        int pages = (int) Math.max(1, Math.min(Integer.MAX_VALUE / rowsAPage, (total + rowsAPage - 1) / rowsAPage));
        int page = typed != null && typed.matches("\\d{1,9}") ? Integer.parseInt(typed) : 1;
        return new AuditPaging(Math.max(1, Math.min(page, pages)), pages, total, rowsAPage);
    }

    int skip() {
        return (page - 1) * rowsAPage;
    }

    public boolean hasEarlier() {
        return page < pages;
    }

    public boolean hasLater() {
        return page > 1;
    }

    public int earlier() {
        return page + 1;
    }

    public int later() {
        return page - 1;
    }
}
