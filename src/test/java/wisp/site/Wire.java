package wisp.site;

/** Events as clients send them, for tests. */
final class Wire {
    private Wire() {}

    static String event(String id, String type, String subject, String time, String data) {
        return "{\"specversion\":\"1.0\",\"id\":\"" + id + "\",\"source\":\"shed\",\"type\":\"" + type
                + "\",\"subject\":\"" + subject + "\",\"time\":\"" + time + "\",\"data\":" + data + "}";
    }

    static String birth(String id, String calf) {
        return event(id, "birth", calf, "2026-03-01T08:00:00Z", "{\"alive\":true,\"sex\":\"female\"}");
    }

    /** A page's text as it reads: no-break spaces as plain ones. */
    static String spaced(String page) {
        return page.replace('\u00a0', ' ');
    }

    /** Single quotes for double ones, so that expected JSON can be read. */
    static String json(String text) {
        return text.replace('\'', '"');
    }
}
