package afterweld.cli;

import java.util.Map;

/**
 * What a command found, in every form it is shown in.
 *
 * @param text for a person, the answer last
 * @param brief the answer only
 * @param json for a program
 * @param files by name, {@code result.json} among them
 * @param exitStatus how it stands
 */
record Answer(String text, String brief, String json, Map<String, byte[]> files, int exitStatus) {}
