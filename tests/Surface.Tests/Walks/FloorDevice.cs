using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text.Json;
using Slantwise.Records.Entries;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Floor;
using Slantwise.Records.Floor.Contracts;
using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Walks;

/// <summary>A tablet as the program knows one: what it asks, without its screen.</summary>
internal sealed class FloorDevice(ServedHost served, string deviceId)
{
    // Answers leave out what is not there; requests must not.
    private static readonly JsonSerializerOptions Answers = new(EntryJson.Options) { RespectRequiredConstructorParameters = false };

    private string? _token;

    /// <summary>Joins by the code on the wall.</summary>
    public async Task<JoinAnswer> JoinAsync(FloorDeviceKind kind, string code)
    {
        var joined = await AskAsync<JoinAnswer>("/sync/join", new JoinRequest(deviceId, kind, code));
        _token = joined.Token;
        return joined;
    }

    /// <summary>Goes on with a token it was given otherwise.</summary>
    public void Take(string token) => _token = token;

    /// <summary>Picks whom it serves.</summary>
    public Task<LessonBundle> ClaimAsync(params Guid[] pupils) => AskAsync<LessonBundle>("/sync/claim", new ClaimRequest(pupils));

    /// <summary>Delivers entries, or says that it is there.</summary>
    public Task<BatchAnswer> SendAsync(int unsentCount, params Entry[] entries) => AskAsync<BatchAnswer>("/sync/entries", new EntryBatch(entries, unsentCount));

    private async Task<T> AskAsync<T>(string address, object body)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, address) { Content = JsonContent.Create(body, body.GetType(), options: EntryJson.Options) };
        if (_token is not null) request.Headers.Authorization = new AuthenticationHeaderValue("Bearer", _token);
        using var answer = await served.Client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.True(answer.IsSuccessStatusCode, $"{address}: {answer.StatusCode} {await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)}");
        return (await answer.Content.ReadFromJsonAsync<T>(Answers, TestContext.Current.CancellationToken))!;
    }
}
