package keenward.core.dialogue.description;

/**
 * A numbered location of the panel's memory.
 *
 * @param number number that is typed to go there
 * @param field full name of the field there
 * @param record number of the record, or 0 for a single field
 * @param screen screen that shows and changes it
 */
public record Location(int number, String field, int record, String screen) {}
