package org.steadwork.account;

import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.config.Config;
import org.eclipse.microprofile.config.ConfigValue;
import org.eclipse.microprofile.config.spi.ConfigSource;
import org.eclipse.microprofile.config.spi.Converter;

/** The settings of a clinic, some of those of the provider changed. */
record OtherConfig(Config usual, Map<String, String> others) implements Config {

    private static final String PREFIX = "steadwork.openid.";

    @Override
    public <T> Optional<T> getOptionalValue(String name, Class<T> type) {
        String other = name.startsWith(PREFIX) ? others.get(name.substring(PREFIX.length())) : null;
        return other == null ? usual.getOptionalValue(name, type) : other.isEmpty() ? Optional.empty() : Optional.of(type.cast(other));
    }

    @Override
    public <T> T getValue(String name, Class<T> type) {
        return usual.getValue(name, type);
    }

    @Override
    public ConfigValue getConfigValue(String name) {
        return usual.getConfigValue(name);
    }

    @Override
    public Iterable<String> getPropertyNames() {
        return usual.getPropertyNames();
    }

    @Override
    public Iterable<ConfigSource> getConfigSources() {
        return usual.getConfigSources();
    }

    @Override
    public <T> Optional<Converter<T>> getConverter(Class<T> type) {
        return usual.getConverter(type);
    }

    @Override
    public <T> T unwrap(Class<T> type) {
        return usual.unwrap(type);
    }
}
