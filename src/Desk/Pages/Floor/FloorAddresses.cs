namespace Slantwise.Desk.Pages.Floor;

/// <summary>Under which addresses tablets find this program.</summary>
/// <param name="isThisMachineOnly">Whether it listens to this machine alone, so that no tablet finds it.</param>
/// <param name="hosts">The machine's names in the network, the likeliest first; asked anew each time, since a machine changes its network.</param>
public sealed class FloorAddresses(bool isThisMachineOnly, Func<IReadOnlyList<string>> hosts)
{
    /// <summary>Whether it listens to this machine alone.</summary>
    public bool IsThisMachineOnly => isThisMachineOnly;

    /// <summary>The addresses, the likeliest first.</summary>
    /// <param name="desk">The address under which the desk was opened, which has the port.</param>
    /// <returns>At least one: where no tablet finds the program, the desk's own.</returns>
    public IReadOnlyList<Uri> Of(Uri desk)
    {
        var found = isThisMachineOnly ? [] : hosts();
        return found.Count == 0 ? [Of(desk, desk.Host)] : [.. found.Select(host => Of(desk, host))];
    }

    /// <summary>The address of a host that was chosen on a page; the likeliest where it is none of this machine's.</summary>
    /// <param name="desk">The address under which the desk was opened.</param>
    /// <param name="host">What was chosen; none for the likeliest.</param>
    public Uri Chosen(Uri desk, string? host)
    {
        var all = Of(desk);
        return all.FirstOrDefault(a => a.Host.Equals(host, StringComparison.OrdinalIgnoreCase)) ?? all[0];
    }

    private static Uri Of(Uri desk, string host) => new UriBuilder(desk.Scheme, host, desk.Port, "/").Uri;
}
