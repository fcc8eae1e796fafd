using System.Net;
using System.Net.Http.Headers;
using System.Net.Sockets;
using System.Text.Json;
using Slantwise.Records.Entries;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Floor;
using Slantwise.Records.Floor.Contracts;

namespace Slantwise.Bench.Floor.Load;

/// <summary>A device of a lesson. It has a connection of its own, comes from its school's own address, and sends one batch at a time, as the page does.</summary>
internal sealed class Tablet : IDisposable
{
    private readonly HttpMessageInvoker _line;
    private readonly Uri _server;
    private readonly FloorLesson _lesson;
    private readonly Tally _tally;
    private readonly Func<double> _nowS;
    private readonly Lock _lock = new();
    private readonly string _deviceId = Guid.NewGuid().ToString("N");
    private List<PlannedBatch> _waiting = [];
    private bool _isSending;
    private long _sequence;
    private AuthenticationHeaderValue? _token;

    public Tablet(Uri server, IPAddress from, FloorLesson lesson, IReadOnlyList<Guid> pupilIds, Tally tally, Func<double> nowS)
    {
        (_server, _lesson, PupilIds, _tally, _nowS) = (server, lesson, pupilIds, tally, nowS);
        _line = new HttpMessageInvoker(new SocketsHttpHandler
        {
            UseProxy = false,
            UseCookies = false,
            AllowAutoRedirect = false,
            PooledConnectionIdleTimeout = Timeout.InfiniteTimeSpan,
            ConnectCallback = async (context, cancel) =>
            {
                var socket = new Socket(AddressFamily.InterNetwork, SocketType.Stream, ProtocolType.Tcp) { NoDelay = true };
                socket.Bind(new IPEndPoint(from, 0));
                await socket.ConnectAsync(new IPEndPoint(IPAddress.Parse(context.DnsEndPoint.Host), context.DnsEndPoint.Port), cancel);
                return new NetworkStream(socket, ownsSocket: true);
            },
        });
    }

    public IReadOnlyList<Guid> PupilIds { get; }

    public bool IsDone
    {
        get { lock (_lock) return !_isSending && _waiting.Count == 0; }
    }

    /// <summary>Joins by the code on the wall, or by a ticket, and takes the lesson along.</summary>
    public async Task JoinAsync(FloorDeviceKind kind, string? ticket = null)
    {
        using var joined = await AskAsync(HttpMethod.Post, "/sync/join", new JoinRequest(_deviceId, kind, ticket is null ? _lesson.Code : null, ticket));
        joined.EnsureSuccessStatusCode();
        _token = new("Bearer", (await ReadAsync(joined)).GetProperty("token").GetString());
        using var bundle = await AskAsync(HttpMethod.Get, "/sync/bundle");
        bundle.EnsureSuccessStatusCode();
        await bundle.Content.CopyToAsync(Stream.Null);
    }

    /// <summary>A batch is due. Where the one before it is still on its way it goes with the next request, and its time counts from when it was due.</summary>
    public void Offer(PlannedBatch batch)
    {
        lock (_lock)
        {
            _waiting.Add(batch);
            if (_isSending) return;
            _isSending = true;
        }
        _ = SendAllAsync();
    }

    /// <summary>Listens, as long as it is let.</summary>
    public async Task ListenAsync(CancellationToken cancel)
    {
        var buffer = new byte[64 * 1024];
        try
        {
            using var answer = await AskAsync(HttpMethod.Get, "/sync/events", cancel: cancel);
            if (!answer.IsSuccessStatusCode) _tally.Trouble($"stream {(int)answer.StatusCode}");
            await using var stream = await answer.Content.ReadAsStreamAsync(cancel);
            for (int count; (count = await stream.ReadAsync(buffer, cancel)) > 0;) _tally.Heard(buffer.AsSpan(0, count).Count("event: news"u8), count);
            _tally.Trouble("stream ended");
        }
        catch (Exception failure) when (failure is HttpRequestException or IOException)
        {
            if (!cancel.IsCancellationRequested) _tally.Trouble("stream broken");
        }
        catch (OperationCanceledException)
        {
            // The measuring is over.
        }
    }

    public void Dispose() => _line.Dispose();

    private async Task SendAllAsync()
    {
        while (true)
        {
            List<PlannedBatch> batches;
            lock (_lock)
            {
                if (_waiting.Count == 0)
                {
                    _isSending = false;
                    return;
                }
                (batches, _waiting) = (_waiting, []);
            }
            var entries = batches.SelectMany(b => b.Facts).Select(EntryOf).ToList();
            while (!await IsTakenAsync(entries)) await Task.Delay(1000);
            var at = _nowS();
            foreach (var batch in batches) _tally.Answered(batch.DueS, at);
        }
    }

    private async Task<bool> IsTakenAsync(IReadOnlyList<Entry> entries)
    {
        try
        {
            using var answer = await AskAsync(HttpMethod.Post, "/sync/entries", new EntryBatch(entries, entries.Count));
            if (!answer.IsSuccessStatusCode)
            {
                _tally.Trouble($"status {(int)answer.StatusCode}");
                return false;
            }
            var said = await ReadAsync(answer);
            foreach (var id in said.GetProperty("takenIds").EnumerateArray()) _tally.AcknowledgedIds.Add(id.GetGuid());
            foreach (var refused in said.GetProperty("refused").EnumerateArray()) _tally.Refused(refused.GetProperty("id").GetGuid(), refused.GetProperty("reason").GetString()!);
            return true;
        }
        catch (Exception failure) when (failure is HttpRequestException or IOException)
        {
            _tally.Trouble(failure.GetType().Name);
            return false;
        }
    }

    private static async Task<JsonElement> ReadAsync(HttpResponseMessage answer) =>
        JsonSerializer.Deserialize<JsonElement>(await answer.Content.ReadAsByteArrayAsync());

    private Entry EntryOf(PlannedFact planned) => new()
    {
        SchoolId = _lesson.SchoolId,
        Id = EntryId.New(TimeProvider.System),
        LessonId = _lesson.LessonId,
        PupilId = planned.PupilId,
        TaskId = planned.TaskId,
        SetNumber = planned.SetNumber,
        TrialNumber = planned.TrialNumber,
        Fact = planned.Fact,
        Source = EntrySource.Floor,
        DeviceId = _deviceId,
        DeviceSequence = ++_sequence,
        MadeAt = TimeProvider.System.GetUtcNow(),
    };

    private async Task<HttpResponseMessage> AskAsync(HttpMethod method, string path, object? body = null, CancellationToken cancel = default)
    {
        using var request = new HttpRequestMessage(method, new Uri(_server, path)) { Version = HttpVersion.Version11 };
        request.Headers.Authorization = _token;
        request.Headers.TryAddWithoutValidation("Accept-Language", "en");
        if (body is not null)
        {
            request.Content = new ByteArrayContent(JsonSerializer.SerializeToUtf8Bytes(body, body.GetType(), EntryJson.Options));
            request.Content.Headers.ContentType = new("application/json");
        }
        return await _line.SendAsync(request, cancel);
    }
}
