namespace Slantwise.Records.Tests.Floor;

/// <summary>A file that the program writes and the floor reads, so that the two cannot drift apart.</summary>
internal static class AgreedFile
{
    /// <summary>Fails where the file says something else. To take a change over: SLANTWISE_WRITE_CONTRACTS=1, run the test, and build and test the floor.</summary>
    /// <param name="file">From the root of the repository.</param>
    /// <param name="text">What it has to say.</param>
    public static async Task HoldAsync(string file, string text)
    {
        var path = Path.Combine(Checkout.Root, file);
        if (Environment.GetEnvironmentVariable("SLANTWISE_WRITE_CONTRACTS") == "1") await File.WriteAllTextAsync(path, text, TestContext.Current.CancellationToken);
        Assert.Equal(text, await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken));
    }
}
