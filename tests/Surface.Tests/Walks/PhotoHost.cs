using Slantwise.Surface.Tests.Host;

namespace Slantwise.Surface.Tests.Walks;

/// <summary>One program for all walks of the page that marks a picture: it stores nothing, so they do not meet.</summary>
public sealed class PhotoHost : IAsyncLifetime
{
    /// <summary>The program.</summary>
    public ServedHost Served { get; private set; } = null!;

    public async ValueTask InitializeAsync() => Served = await ServedHost.StartAsync();

    public ValueTask DisposeAsync() => Served.DisposeAsync();
}
