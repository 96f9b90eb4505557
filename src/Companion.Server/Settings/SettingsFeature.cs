using Companion.Server.Data;

namespace Companion.Server.Settings;

/// <summary>Where the settings come from.</summary>
internal static class SettingsFeature
{
    /// <summary>Reads the settings of all places, the last one first.</summary>
    /// <param name="folder">The data folder, with the presenter's own file.</param>
    /// <param name="port">The port named on the command line, or null.</param>
    /// <exception cref="PlainException">A file or a value cannot be used.</exception>
    public static ServerSettings Read(DataFolder folder, int? port = null)
    {
        try
        {
            var configuration = new ConfigurationBuilder()
                .AddJsonFile(ShippedFiles.Settings, optional: false)
                .AddJsonFile(folder.Settings, optional: true)
                .AddEnvironmentVariables("COMPANION_")
                .Build();
            if (configuration["tls:password"] is not null)
                throw new PlainException($"A password does not stand among the settings: put it into {TlsSettings.PasswordVariable} or a passwordFile.");
            var settings = configuration.Get<ServerSettings>() ?? new();
            settings = port is { } asked ? settings with { Port = asked } : settings;
            var faults = settings.Faults().ToList();
            return faults.Count == 0 ? settings : throw new PlainException(string.Join(' ', faults));
        }
        catch (Exception fault) when (fault is InvalidDataException or InvalidOperationException or IOException)
        {
            throw new PlainException($"The settings cannot be read: {fault.Message} Correct companion.json or the environment.", fault);
        }
    }
}
