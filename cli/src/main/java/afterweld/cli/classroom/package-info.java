/**
 * The classroom: one page on this machine on which a weld and its heat treatment can be moved and
 * watched. The page shows, the simulator computes.
 *
 * <pre>{@code
 * ClassroomServer server = ClassroomServer.start(0);   // any free port
 * server.address();                                    // http://127.0.0.1:40123/
 * server.stop();
 * }</pre>
 *
 * <p>What is on the page is always a case: the very text that {@code afterweld profile} reads. The
 * page sends it as JSON to {@code /api/section}; {@code CaseText} reads it, the session keeps the
 * welds of the last few cases, {@code SectionAnswer} writes the numbers down with all their digits,
 * {@code ReplayAnswer} its moving pictures to a tenth. {@code Turns} ends work that nobody waits
 * for and keeps a seat for what is short. {@code Door} lets in only what comes from the page
 * itself, {@code PageFiles} holds the page.
 *
 * <p>The server listens on the loopback address, remembers nothing on disk and asks nobody.
 */
package afterweld.cli.classroom;
