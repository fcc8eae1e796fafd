using System.Collections.Concurrent;
using System.Globalization;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Postures;

namespace Slantwise.Desk.Pages.Tasks.Designer;

/// <summary>What the mechanics say of a level's picture, each worked out once.</summary>
public static class LevelMechanics
{
    private static readonly ConcurrentDictionary<(string Key, string Language), string?> Said = [];

    /// <summary>How much room there is, and over what it would tip first.</summary>
    /// <param name="posture">The posture's key.</param>
    /// <param name="language">The reader's language.</param>
    /// <returns>A sentence; none for a posture that the library does not have.</returns>
    public static string? Of(string posture, CultureInfo language) => Said.GetOrAdd((posture, language.TwoLetterISOLanguageName), _ => Read(posture, language));

    private static string? Read(string key, CultureInfo language)
    {
        if (PostureLibrary.Find(key) is not { } posture) return null;
        var settled = posture.Settle();
        return BalanceWords.Verdict(settled, PostureBalance.Of(settled), language);
    }
}
