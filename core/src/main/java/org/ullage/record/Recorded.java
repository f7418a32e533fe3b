package org.ullage.record;

import com.fasterxml.jackson.annotation.JacksonAnnotationsInside;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a record that is kept in a file: what is not recorded is left out of it. It stands for Jackson's own annotation so that a compiler
 * without Jackson, which warns of a constant it cannot find, has none to look for. The order of the fields is that of the components.
 */
@JacksonAnnotationsInside
@JsonInclude(JsonInclude.Include.NON_EMPTY)
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
@interface Recorded {}
