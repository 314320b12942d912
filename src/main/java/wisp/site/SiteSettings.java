package wisp.site;

import java.util.Set;
import wisp.calendar.CalendarAddresses;

/**
 * How a server is reached.
 *
 * @param host the address to listen on
 * @param port 0 takes any free port
 * @param names host names that requests may use beside this machine's own and the address
 * @param calendars the secret addresses of people's calendars
 */
public record SiteSettings(String host, int port, Set<String> names, CalendarAddresses calendars) {}
