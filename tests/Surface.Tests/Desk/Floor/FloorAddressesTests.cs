using Slantwise.Desk.Pages.Floor;

namespace Slantwise.Surface.Tests.Desk.Floor;

public sealed class FloorAddressesTests
{
    private static readonly Uri Desk = new("https://127.0.0.1:5443/");

    [Fact]
    public void Of_AProgramForItsOwnMachine_IsTheDesksAddress()
    {
        var addresses = new FloorAddresses(isThisMachineOnly: true, () => throw new InvalidOperationException("The network is not asked."));
        Assert.Equal([Desk], addresses.Of(Desk));
    }

    [Fact]
    public void Of_AProgramInTheNetwork_HasTheDesksSchemeAndPort() => Assert.Equal(
        ["https://192.0.2.7:5443/", "https://gym.local:5443/", "https://[2001:db8::7]:5443/"],
        Network("192.0.2.7", "gym.local", "[2001:db8::7]").Of(Desk).Select(a => a.ToString()));

    [Fact]
    public void Of_AMachineWithoutANetwork_IsTheDesksAddress() => Assert.Equal([Desk], Network().Of(Desk));

    [Theory]
    [InlineData("gym.local", "gym.local")]
    [InlineData("GYM.local", "gym.local")]
    [InlineData("192.0.2.7", "192.0.2.7")]
    [InlineData("evil.example", "192.0.2.7")]
    [InlineData("", "192.0.2.7")]
    [InlineData(null, "192.0.2.7")]
    public void Chosen_AnyHost_IsOneOfTheMachinesOwn(string? asked, string host) => Assert.Equal(host, Network("192.0.2.7", "gym.local").Chosen(Desk, asked).Host);

    private static FloorAddresses Network(params string[] hosts) => new(isThisMachineOnly: false, () => hosts);
}
