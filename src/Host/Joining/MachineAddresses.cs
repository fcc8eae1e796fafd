using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using Slantwise.Desk.Pages.Floor;

namespace Slantwise.Host.Joining;

/// <summary>Under which names other machines in the network find this one.</summary>
internal static class MachineAddresses
{
    /// <summary>The addresses for tablets of a program that listens on an address.</summary>
    /// <param name="bound">Where it listens.</param>
    public static FloorAddresses Of(IPAddress bound)
    {
        if (IPAddress.IsLoopback(bound)) return new FloorAddresses(isThisMachineOnly: true, () => []);
        var isAny = bound.Equals(IPAddress.Any) || bound.Equals(IPAddress.IPv6Any);
        return new FloorAddresses(isThisMachineOnly: false, isAny ? () => List(hasV6: bound.Equals(IPAddress.IPv6Any)) : () => [Host(bound)]);
    }

    // What is typed most easily first: four numbers, then the machine's name where the network knows names, then the long ones.
    private static IReadOnlyList<string> List(bool hasV6)
    {
        var found = NetworkInterface.GetAllNetworkInterfaces()
            .Where(card => card.OperationalStatus == OperationalStatus.Up && card.NetworkInterfaceType != NetworkInterfaceType.Loopback)
            .OrderByDescending(card => card.NetworkInterfaceType is NetworkInterfaceType.Wireless80211 or NetworkInterfaceType.Ethernet)
            // A card with a way out is the network's; one without is often a machine inside this machine.
            .ThenByDescending(card => card.GetIPProperties().GatewayAddresses.Count > 0)
            .SelectMany(card => card.GetIPProperties().UnicastAddresses.Select(a => a.Address))
            .ToList();
        var four = found.Where(a => a.AddressFamily == AddressFamily.InterNetwork && !IsLinkLocal(a)).Select(Host);
        var six = found.Where(a => hasV6 && a is { AddressFamily: AddressFamily.InterNetworkV6, IsIPv6LinkLocal: false, IsIPv6Multicast: false }).Select(Host);
        // Browsers show a host in small letters.
        return [.. four.Distinct(), $"{Dns.GetHostName().ToLowerInvariant()}.local", .. six.Distinct()];
    }

    private static string Host(IPAddress address) => address.AddressFamily == AddressFamily.InterNetworkV6 ? $"[{new IPAddress(address.GetAddressBytes())}]" : address.ToString();

    // Given to itself by a machine that found no network. Source: [RFC3927].
    private static bool IsLinkLocal(IPAddress address) => address.GetAddressBytes() is [169, 254, _, _];
}
