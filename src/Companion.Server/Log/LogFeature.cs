using Companion.Server.Data;
using Companion.Server.Shows;
using Serilog;
using Serilog.Events;

namespace Companion.Server.Log;

/// <summary>The event log, and the program's log files.</summary>
internal static class LogFeature
{
    /// <summary>Adds the event log and the shows that it keeps.</summary>
    /// <param name="services">Where to.</param>
    public static IServiceCollection AddEventLog(this IServiceCollection services) =>
        services.AddSingleton<IEventLog>(provider => SqliteEventLog.OpenOrSalvage(provider.GetRequiredService<DataFolder>()))
            .AddSingleton<ShowLibrary>();

    // The static logger is left alone: all servers of a process share it, and the first to stop closes it for all.
    /// <summary>Adds the log files.</summary>
    /// <param name="services">Where to.</param>
    public static IServiceCollection AddLogFiles(this IServiceCollection services) => services
        .AddSerilog((provider, log) => Configure(log, provider.GetRequiredService<DataFolder>()), preserveStaticLogger: true);

    // No line for each request, and none with a query: links and cookies carry keys.
    private static void Configure(LoggerConfiguration log, DataFolder folder)
    {
        OwnerOnly.MakeFolder(folder.Logs);
        log.MinimumLevel.Information()
            .MinimumLevel.Override("Microsoft", LogEventLevel.Warning)
            // A page without a key knocks every few seconds.
            .MinimumLevel.Override("Companion.Server.Access", LogEventLevel.Warning)
            .WriteTo.File(
                Path.Combine(folder.Logs, "companion-.log"),
                rollingInterval: RollingInterval.Day,
                retainedFileCountLimit: 14,
                fileSizeLimitBytes: 10_000_000,
                rollOnFileSizeLimit: true,
                hooks: new OwnerOnlyLog(),
                formatProvider: System.Globalization.CultureInfo.InvariantCulture);
    }
}
