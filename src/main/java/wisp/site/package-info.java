/** The pages and the HTTP interface, on Javalin. Handlers parse, ask the records, and show. */
package wisp.site;
