using System.Collections.Concurrent;
using System.Net.WebSockets;
using System.Text.Json;

namespace Crossref.Browser.Tests.Tabs;

/// <summary>
/// WebDriver BiDi (a W3C protocol: JSON over a WebSocket), which a distribution's unchanged Firefox understands. A command
/// has an id that its answer repeats; what has none is an event.
/// </summary>
public sealed class BidiConnection : IDisposable
{
    private readonly ClientWebSocket _socket = new();
    private readonly SemaphoreSlim _sending = new(1);
    private readonly ConcurrentDictionary<int, TaskCompletionSource<JsonElement>> _unanswered = new();
    private int _lastId;

    private BidiConnection()
    {
    }

    /// <summary>An event's name and parameters.</summary>
    public event Action<string, JsonElement>? Happened;

    public static async Task<BidiConnection> OpenAsync(Uri address)
    {
        var connection = new BidiConnection();
        await connection._socket.ConnectAsync(address, CancellationToken.None);
        _ = connection.ListenAsync();
        return connection;
    }

    /// <summary>Gives a command and waits for its result.</summary>
    public async Task<JsonElement> SendAsync(string method, object parameters)
    {
        var id = Interlocked.Increment(ref _lastId);
        var answer = _unanswered[id] = new(TaskCreationOptions.RunContinuationsAsynchronously);
        var message = JsonSerializer.SerializeToUtf8Bytes(new { id, method, @params = parameters });
        await _sending.WaitAsync();
        try
        {
            await _socket.SendAsync(message, WebSocketMessageType.Text, true, CancellationToken.None);
        }
        finally
        {
            _sending.Release();
        }

        return await answer.Task.WaitAsync(TimeSpan.FromSeconds(60));
    }

    public void Dispose()
    {
        _socket.Dispose();
        _sending.Dispose();
    }

    private async Task ListenAsync()
    {
        try
        {
            while (true)
            {
                Take(await ReceiveAsync());
            }
        }
        catch (Exception error) // the browser has gone: nobody must wait for it
        {
            foreach (var answer in _unanswered.Values) answer.TrySetException(error);
        }
    }

    private async Task<JsonElement> ReceiveAsync()
    {
        using var message = new MemoryStream();
        var part = new byte[64 * 1024];
        while (true)
        {
            var received = await _socket.ReceiveAsync(part, CancellationToken.None);
            if (received.MessageType == WebSocketMessageType.Close) throw new WebSocketException("The browser closed the connection.");
            message.Write(part, 0, received.Count);
            if (received.EndOfMessage) return JsonDocument.Parse(message.ToArray()).RootElement;
        }
    }

    private void Take(JsonElement message)
    {
        if (message.GetProperty("type").GetString() == "event")
        {
            Happened?.Invoke(message.GetProperty("method").GetString()!, message.GetProperty("params"));
        }
        else if (message.GetProperty("id") is { ValueKind: JsonValueKind.Number } id && _unanswered.TryRemove(id.GetInt32(), out var answer))
        {
            if (message.TryGetProperty("result", out var result)) answer.TrySetResult(result);
            else answer.TrySetException(new InvalidOperationException(message.GetRawText()));
        }
    }
}
