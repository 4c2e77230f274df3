//! Yew as it is, except that an element of `html!` is put together by a call rather than at each of the nine hundred places where
//! one stands. Yew leaves that work to be done in place, for speed; here the program's size matters more.
//!
//! `html!` names what it makes by paths from `::yew`, and the pages know this crate by that name; so what is defined here stands
//! before Yew's own of the same name.

pub use yew::*;

pub mod html {
    //! Yew's, with [`NodeRef`] as elements ask for it.

    pub use crate::virtual_dom::Reference as NodeRef;
    pub use yew::html::*;
}

pub mod virtual_dom {
    //! Yew's, with elements that are put together by a call.

    use std::mem::forget;
    use yew::html::IntoPropValue;
    pub use yew::virtual_dom::*;

    /// A reference to an element, where one is kept. Most elements keep none, and need not make one.
    #[derive(Default)]
    pub struct Reference(Option<yew::NodeRef>);

    impl IntoPropValue<Reference> for yew::NodeRef {
        fn into_prop_value(self) -> Reference {
            Reference(Some(self))
        }
    }

    /// What `html!` makes elements with.
    pub struct VTag;

    type Attribute = (&'static str, AttributeOrProperty);

    impl VTag {
        #[doc(hidden)]
        #[inline(always)]
        pub fn __new_other(
            tag: AttrValue,
            node_ref: Reference,
            key: Option<Key>,
            attributes: Attributes,
            listeners: Listeners,
            children: VNode,
        ) -> VNode {
            // Nearly all elements are of the first two sorts, and which one is known where the element stands. What is forgotten holds
            // nothing; to let go of it in the usual way would be five calls at each of those places.
            let plain =
                node_ref.0.is_none() && key.is_none() && matches!(listeners, Listeners::None);
            if let (true, &AttrValue::Static(name)) = (plain, &tag) {
                forget((tag, node_ref, key, listeners));
                match attributes {
                    Attributes::Static(kept) => return unchanging(name, kept, children),
                    Attributes::Dynamic { keys, values } => {
                        return changing(name, keys, values, children);
                    }
                    Attributes::IndexMap(_) => {
                        let name = AttrValue::Static(name);
                        return whole(name, None, None, attributes, Listeners::None, children);
                    }
                }
            }
            whole(tag, node_ref.0, key, attributes, listeners, children)
        }

        #[doc(hidden)]
        #[inline(never)]
        pub fn __new_input(
            value: Option<AttrValue>,
            checked: Option<bool>,
            node_ref: Reference,
            key: Option<Key>,
            attributes: Attributes,
            listeners: Listeners,
        ) -> VNode {
            let node_ref = node_ref.0.unwrap_or_default();
            yew::virtual_dom::VTag::__new_input(
                value, checked, node_ref, key, attributes, listeners,
            )
            .into()
        }

        #[doc(hidden)]
        #[inline(never)]
        pub fn __new_textarea(
            value: Option<AttrValue>,
            default: Option<AttrValue>,
            node_ref: Reference,
            key: Option<Key>,
            attributes: Attributes,
            listeners: Listeners,
        ) -> VNode {
            let node_ref = node_ref.0.unwrap_or_default();
            yew::virtual_dom::VTag::__new_textarea(
                value, default, node_ref, key, attributes, listeners,
            )
            .into()
        }
    }

    /// An element whose attributes never change.
    #[inline(never)]
    fn unchanging(tag: &'static str, attributes: &'static [Attribute], children: VNode) -> VNode {
        let attributes = Attributes::Static(attributes);
        whole(
            AttrValue::Static(tag),
            None,
            None,
            attributes,
            Listeners::None,
            children,
        )
    }

    /// An element that nobody presses.
    #[inline(never)]
    fn changing(
        tag: &'static str,
        keys: &'static [&'static str],
        values: Box<[Option<AttributeOrProperty>]>,
        children: VNode,
    ) -> VNode {
        let attributes = Attributes::Dynamic { keys, values };
        whole(
            AttrValue::Static(tag),
            None,
            None,
            attributes,
            Listeners::None,
            children,
        )
    }

    #[inline(never)]
    fn whole(
        tag: AttrValue,
        node_ref: Option<yew::NodeRef>,
        key: Option<Key>,
        attributes: Attributes,
        listeners: Listeners,
        children: VNode,
    ) -> VNode {
        let node_ref = node_ref.unwrap_or_default();
        yew::virtual_dom::VTag::__new_other(tag, node_ref, key, attributes, listeners, children)
            .into()
    }
}
