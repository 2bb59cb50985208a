/**
 * Files in and out: a case or none, an output folder whole or not at all. {@code Draft} writes
 * beside the folder and swaps, {@code FolderLock} lets one run at a time, {@code FolderMark} names
 * what is the program's own.
 *
 * <pre>{@code
 * OutputFolder.claim(folder, caseFile).write(files);   // old or new, never mixed
 * }</pre>
 */
package afterweld.cli.files;
