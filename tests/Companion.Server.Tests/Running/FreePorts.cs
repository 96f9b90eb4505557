using System.Net;
using System.Net.Sockets;

namespace Companion.Server.Tests.Running;

/// <summary>
/// Ports for programs that cannot be told to take any that is free. They lie below those that systems give to outgoing connections
/// (32768 and up on Linux), so that none is taken between its choice and its use; each test process begins elsewhere.
/// </summary>
internal static class FreePorts
{
    private const int First = 20_000;
    private const int Count = 12_000;

    private static int _next = Environment.ProcessId * 97;

    /// <summary>A port that nobody has, another one each time.</summary>
    public static int Next()
    {
        while (true)
        {
            var port = First + ((Interlocked.Increment(ref _next) & int.MaxValue) % Count);
            using var socket = new TcpListener(IPAddress.Loopback, port);
            try
            {
                socket.Start();
                return port;
            }
            catch (SocketException)
            {
                // Somebody has it: the next one.
            }
        }
    }
}
