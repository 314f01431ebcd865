using Scriban;
using Scriban.Functions;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Crossref.Site.Pages.Templating;

/// <summary>The include function of templates. What comes back was escaped while it was written and must not be escaped again.</summary>
internal sealed class IncludeAsMarkup : IScriptCustomFunction
{
    private readonly IncludeFunction _include = new();

    public int RequiredParameterCount => _include.RequiredParameterCount;

    public int ParameterCount => _include.ParameterCount;

    public ScriptVarParamKind VarParamKind => _include.VarParamKind;

    public Type ReturnType => typeof(Markup);

    public ScriptParameterInfo GetParameterInfo(int index) => _include.GetParameterInfo(index);

    public object? Invoke(TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) =>
        new Markup(_include.Invoke(context, callerContext, arguments, blockStatement)?.ToString() ?? "");

    public async ValueTask<object?> InvokeAsync(
        TemplateContext context, ScriptNode? callerContext, ScriptArray arguments, ScriptBlockStatement? blockStatement) =>
        new Markup((await _include.InvokeAsync(context, callerContext, arguments, blockStatement).ConfigureAwait(false))?.ToString() ?? "");
}
