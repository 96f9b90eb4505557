using System.Diagnostics;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Relay;

/// <summary>A real Redis server that keeps nothing on the disk.</summary>
internal sealed class RedisServer : ChildServer
{
    /// <summary>How clients connect.</summary>
    public string Connection => $"127.0.0.1:{Port}";

    protected override Process Launch() => DebianPackages.Redis.Start(
        "redis-server", "--port", $"{Port}", "--bind", "127.0.0.1", "--save", "", "--appendonly", "no", "--dir", Folder.Path);
}
