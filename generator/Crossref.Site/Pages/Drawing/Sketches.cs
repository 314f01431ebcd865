using Crossref.Core.Records;
using Crossref.Site.Pages.Templating;
namespace Crossref.Site.Pages.Drawing;
internal static class Sketches { internal static Markup? Of(Part part, SizeText sizes) => part is null || sizes is null ? new Markup("") : null; }
