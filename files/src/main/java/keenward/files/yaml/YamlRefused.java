package keenward.files.yaml;

/**
 * Stands for something refused that is already reported; whoever meets it passes over it in
 * silence.
 */
public record YamlRefused(Span span) implements YamlNode {}
