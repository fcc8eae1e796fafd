namespace Slantwise.Storage.Model;

/// <summary>The door to both databases: what one of them would refuse or change in silence is refused for both.</summary>
internal static class StoredValue
{
    /// <summary>The value, if both databases give it back as it is.</summary>
    /// <exception cref="ArgumentException">A text with a NUL or half a surrogate pair; a number that is not finite.</exception>
    public static object? Checked(object? value, string column) => value switch
    {
        // SQLite keeps NaN as nothing at all.
        double number when !double.IsFinite(number) => throw new ArgumentException($"The value of {column} is {number}; it must be a finite number. Nothing was saved."),
        // PostgreSQL takes no NUL; half a surrogate pair has no UTF-8 form and would come back as another character.
        string text when !IsKept(text) => throw new ArgumentException($"The text of {column} holds a character that cannot be kept (a NUL or half a surrogate pair). Nothing was saved."),
        _ => value,
    };

    private static bool IsKept(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '\0') return false;
            if (!char.IsSurrogate(text[i])) continue;
            if (i + 1 == text.Length || !char.IsSurrogatePair(text[i], text[i + 1])) return false;
            i++;
        }
        return true;
    }
}
