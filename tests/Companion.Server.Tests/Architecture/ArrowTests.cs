using System.Reflection;
using Companion.Drawing.Pictures;
using Companion.Engine;
using Companion.Session;
using Companion.Sight;
using NetArchTest.Rules;

namespace Companion.Server.Tests.Architecture;

/// <summary>Arrows: Engine &lt;- Session &lt;- Drawing &lt;- Server, and Engine &lt;- Sight &lt;- Server.</summary>
public sealed class ArrowTests
{
    private static readonly Assembly EngineAssembly = typeof(Board).Assembly;
    private static readonly Assembly SessionAssembly = typeof(Decider).Assembly;
    private static readonly Assembly DrawingAssembly = typeof(Picture).Assembly;
    private static readonly Assembly SightAssembly = typeof(Frame).Assembly;
    private static readonly Assembly ServerAssembly = typeof(Program).Assembly;

    [Fact]
    public void Each_part_knows_only_the_parts_below_it()
    {
        Assert.Equal([], OurReferences(EngineAssembly));
        Assert.Equal(["Companion.Engine"], OurReferences(SessionAssembly));
        Assert.Equal(["Companion.Engine", "Companion.Session"], OurReferences(DrawingAssembly));
        Assert.Equal(["Companion.Engine"], OurReferences(SightAssembly));
        Assert.Equal(["Companion.Drawing", "Companion.Engine", "Companion.Session", "Companion.Sight"], OurReferences(ServerAssembly));
    }

    [Fact]
    public void The_engine_and_the_session_use_no_package() => Assert.All(
        [EngineAssembly, SessionAssembly],
        assembly => Assert.All(
            assembly.GetReferencedAssemblies().Where(reference => !IsOurs(reference)),
            reference => Assert.StartsWith("System.", reference.Name, StringComparison.Ordinal)));

    [Fact]
    public void The_engine_and_the_session_reach_neither_files_nor_the_network_nor_a_clock() => Holds(
        Types.InAssemblies([EngineAssembly, SessionAssembly])
            .ShouldNot().HaveDependencyOnAny("System.IO.File", "System.IO.Directory", "System.Net", "System.Threading.Thread", "System.Console", "System.TimeProvider"));

    [Fact]
    public void Only_the_event_log_knows_its_database() => Holds(
        Types.InAssembly(ServerAssembly).That().DoNotResideInNamespace("Companion.Server.Log")
            .ShouldNot().HaveDependencyOn("Microsoft.Data.Sqlite"));

    [Fact]
    public void The_command_line_does_not_reach_into_the_live_session() => Holds(
        Types.InAssembly(ServerAssembly).That().ResideInNamespace("Companion.Server.CommandLine")
            .ShouldNot().HaveDependencyOn("Companion.Server.Live"));

    private static void Holds(ConditionList rule)
    {
        var result = rule.GetResult();
        Assert.True(result.IsSuccessful, string.Join('\n', result.FailingTypeNames ?? []));
    }

    private static IEnumerable<string> OurReferences(Assembly assembly) =>
        assembly.GetReferencedAssemblies().Where(IsOurs).Select(reference => reference.Name!).Order(StringComparer.Ordinal);

    private static bool IsOurs(AssemblyName name) => name.Name!.StartsWith("Companion", StringComparison.OrdinalIgnoreCase);
}
