import { HttpTransportType, type HubConnection, HubConnectionBuilder, LogLevel } from '@microsoft/signalr';
import { MessagePackHubProtocol } from '@microsoft/signalr-protocol-msgpack';

/** A hub by WebSockets alone. It never reconnects by itself: that is the line's business. */
export function hubAt(address: string): HubConnection {
  return new HubConnectionBuilder()
    .withUrl(address, { transport: HttpTransportType.WebSockets, skipNegotiation: true })
    .withHubProtocol(new MessagePackHubProtocol())
    .configureLogging(LogLevel.None)
    .build();
}
